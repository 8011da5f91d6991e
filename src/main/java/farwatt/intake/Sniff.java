package farwatt.intake;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.apache.poi.poifs.filesystem.DirectoryNode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** Finds out what a file is from its content. */
final class Sniff {
    private static final int HEAD = 4096;
    private static final int SMALL_PART = 1 << 20;
    private static final int[] OLE = {0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1};
    private static final int[] ZIP = {'P', 'K', 3, 4};

    private Sniff() {}

    static FileKind kind(Path file) throws IOException {
        byte[] head;
        try (InputStream in = Files.newInputStream(file)) {
            head = in.readNBytes(HEAD);
        }
        if (starts(head, OLE)) {
            return inCompound(file);
        }
        if (starts(head, ZIP)) {
            return inZip(file);
        }
        return byHead(head);
    }

    private static FileKind byHead(byte[] head) {
        String start = new String(head, StandardCharsets.ISO_8859_1).replaceFirst("^\u00ef\u00bb\u00bf", "");
        String plain = start.stripLeading().toLowerCase(Locale.ROOT);
        if (plain.startsWith("%pdf")) {
            return FileKind.PDF;
        }
        if (start.startsWith("\u0089PNG") || start.startsWith("\u00ff\u00d8\u00ff") || start.startsWith("GIF8")) {
            return FileKind.PICTURE;
        }
        if (plain.startsWith("{\\rtf")) {
            return FileKind.LETTER;
        }
        if (plain.startsWith("<!doctype html") || plain.startsWith("<html") || plain.startsWith("<table")) {
            return FileKind.HTML;
        }
        if (plain.startsWith("<?xml")) {
            return plain.contains("<html") ? FileKind.HTML : FileKind.XML;
        }
        return isText(head) ? FileKind.TEXT : FileKind.BINARY;
    }

    /** Text has no control signs but breaks and tabs; UTF-16 has a zero in every pair of bytes. */
    private static boolean isText(byte[] head) {
        int zeros = 0;
        int controls = 0;
        for (byte b : head) {
            zeros += b == 0 ? 1 : 0;
            boolean usual = b == '\t' || b == '\n' || b == '\r' || b == 0x0c || b == 0x1f || b == 0x1e || b == 0x1a;
            controls += b > 0 && b < 32 && !usual ? 1 : 0;
        }
        boolean wide = Encoding.isUtf16(head);
        return wide || (zeros == 0 && controls * 50 <= head.length);
    }

    /** A compound file holds an old workbook, a locked one, or something else. */
    private static FileKind inCompound(Path file) {
        Poi.start();
        try (POIFSFileSystem files = new POIFSFileSystem(file.toFile(), true)) {
            DirectoryNode root = files.getRoot();
            if (root.hasEntryCaseInsensitive("EncryptedPackage")) {
                return FileKind.LOCKED;
            }
            boolean book = root.hasEntryCaseInsensitive("Workbook") || root.hasEntryCaseInsensitive("Book");
            return book ? FileKind.XLS : FileKind.LETTER;
        } catch (IOException | RuntimeException broken) {
            // the library reports damage in many ways
            return FileKind.DAMAGED;
        }
    }

    private static FileKind inZip(Path file) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements(); ) {
                ZipEntry entry = all.nextElement();
                if (Poi.swells(entry.getSize(), entry.getCompressedSize())) {
                    return FileKind.SWELLS;
                }
            }
            String mime = part(zip, "mimetype");
            if (mime.contains("opendocument")) {
                return FileKind.OPEN_DOCUMENT;
            }
            String types = part(zip, "[Content_Types].xml");
            if (types.isEmpty()) {
                return zip.getEntry("content.xml") != null ? FileKind.OPEN_DOCUMENT : FileKind.ARCHIVE;
            }
            return office(zip, types);
        } catch (ZipException | EOFException | IllegalArgumentException broken) {
            // the last of them is said of names
            return FileKind.DAMAGED;
        }
    }

    private static FileKind office(ZipFile zip, String types) throws IOException {
        if (types.contains("sheet.binary")) {
            return FileKind.XLSB;
        }
        if (!types.contains("spreadsheetml") && !types.contains("ms-excel")) {
            return FileKind.LETTER;
        }
        boolean strict = part(zip, "xl/workbook.xml").contains("http://purl.oclc.org/ooxml/spreadsheetml/main");
        return strict ? FileKind.STRICT : FileKind.XLSX;
    }

    private static String part(ZipFile zip, String name) throws IOException {
        ZipEntry entry = zip.getEntry(name);
        if (entry == null) {
            return "";
        }
        try (InputStream in = zip.getInputStream(entry)) {
            return new String(in.readNBytes(SMALL_PART), StandardCharsets.UTF_8);
        }
    }

    private static boolean starts(byte[] head, int[] mark) {
        if (head.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((head[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }
}
