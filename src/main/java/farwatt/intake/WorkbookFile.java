package farwatt.intake;

import farwatt.report.Cancel;
import farwatt.report.Refusal;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.zip.ZipInputStream;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** Opens workbooks, locked or not, and lets go of them again. What the library throws never reaches a person. */
final class WorkbookFile {
    private static final int STEP = 1 << 16;

    private final Path file;
    private final Optional<String> password;
    private final Cancel cancel;

    WorkbookFile(Path file, Optional<String> password, Cancel cancel) {
        this.file = file;
        this.password = password;
        this.cancel = cancel;
    }

    /** The sheets of a workbook of a kind that can be read. */
    List<Sheet> sheets(FileKind kind) throws IOException, Refusal {
        Poi.start();
        try {
            return switch (kind) {
                case XLS -> old();
                case LOCKED -> locked();
                default -> plain();
            };
        } catch (CancellationException stopped) {
            throw stopped;
        } catch (EncryptedDocumentException locked) {
            throw Refusal.of(password.isPresent() ? IntakeSays.WRONG_PASSWORD : IntakeSays.LOCKED);
        } catch (IOException | RuntimeException | GeneralSecurityException broken) {
            // the file was there and its head was read: whatever the library says now means that it is damaged
            throw Refusal.of(Swelling.isCause(broken) ? IntakeSays.SWELLS : IntakeSays.DAMAGED);
        }
    }

    private List<Sheet> plain() throws IOException, Refusal {
        OPCPackage files;
        try {
            files = OPCPackage.open(file.toFile(), PackageAccess.READ);
        } catch (InvalidFormatException broken) {
            throw Refusal.of(IntakeSays.DAMAGED);
        }
        try {
            return new Xlsx(files, cancel).sheets();
        } finally {
            files.revert();
        }
    }

    private List<Sheet> old() throws IOException {
        Biff8EncryptionKey.setCurrentUserPassword(password.orElse(null));
        try (POIFSFileSystem files = new POIFSFileSystem(file.toFile(), true);
                HSSFWorkbook workbook = new HSSFWorkbook(files.getRoot(), false)) {
            return new Xls(workbook, cancel).sheets();
        } finally {
            Biff8EncryptionKey.setCurrentUserPassword(null);
        }
    }

    private List<Sheet> locked() throws IOException, GeneralSecurityException, Refusal {
        byte[] unlocked;
        try (POIFSFileSystem files = new POIFSFileSystem(file.toFile(), true)) {
            Decryptor decryptor = Decryptor.getInstance(new EncryptionInfo(files));
            boolean opens = decryptor.verifyPassword(password.orElse(Decryptor.DEFAULT_PASSWORD));
            if (!opens) {
                throw Refusal.of(password.isPresent() ? IntakeSays.WRONG_PASSWORD : IntakeSays.LOCKED);
            }
            try (InputStream in = decryptor.getDataStream(files)) {
                unlocked = in.readAllBytes();
            }
        }
        checkSize(unlocked);
        try (OPCPackage files = OPCPackage.open(new ByteArrayInputStream(unlocked))) {
            return new Xlsx(files, cancel).sheets();
        } catch (InvalidFormatException broken) {
            throw Refusal.of(IntakeSays.DAMAGED);
        }
    }

    /** What lies in memory is unpacked as a whole: look at the sizes before. */
    private static void checkSize(byte[] unlocked) throws IOException, Refusal {
        long all = 0;
        byte[] step = new byte[STEP];
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(unlocked))) {
            while (zip.getNextEntry() != null) {
                for (int n = zip.read(step); n > 0; n = zip.read(step)) {
                    all += n;
                    if (all > 2 * Poi.LARGEST_UNASKED) {
                        throw Refusal.of(IntakeSays.SWELLS);
                    }
                }
            }
        }
    }
}
