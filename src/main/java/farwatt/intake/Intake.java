package farwatt.intake;

import farwatt.report.Cancel;
import farwatt.report.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Reads customers' lists: what kind of file it is, its rows, what its columns mean, what each row says. Nothing goes
 * into a plan here; {@link TakeIn} does that. Stateless, safe for any thread; never changes the file.
 */
public final class Intake {
    private static final long LARGEST = 64L << 20;

    private Intake() {}

    /**
     * Reads a file, whatever its name says it is.
     *
     * @throws Refusal if it is no list that can be read, with the one sentence to say
     * @throws IOException if the file cannot be read from the disk
     */
    public static Outcome read(Path file, Wishes wishes, Cancel cancel) throws IOException, Refusal {
        return open(file, wishes, cancel).outcome();
    }

    /**
     * The same, kept open so that rows can be mended one by one.
     *
     * @throws Refusal if it is no list that can be read, with the one sentence to say
     * @throws IOException if the file cannot be read from the disk
     */
    public static OpenList open(Path file, Wishes wishes, Cancel cancel) throws IOException, Refusal {
        if (!Files.isRegularFile(file)) {
            throw Refusal.of(IntakeSays.NO_FILE, file.getFileName());
        }
        long size = Files.size(file);
        if (size == 0) {
            throw Refusal.of(IntakeSays.EMPTY);
        }
        if (size > LARGEST) {
            throw Refusal.of(IntakeSays.TOO_LARGE, size >> 20, LARGEST >> 20);
        }
        FileKind kind = Sniff.kind(file);
        if (!kind.isRead()) {
            throw Refusal.of(kind.says());
        }
        if (kind == FileKind.TEXT) {
            return understood(TextList.of(Files.readAllBytes(file), wishes.mapping()), wishes, cancel);
        }
        List<Sheet> sheets = new WorkbookFile(file, wishes.password(), cancel).sheets(kind);
        return understood(new ListFile(sheets, List.of(), List.of()), wishes, cancel);
    }

    /**
     * Reads a pasted text.
     *
     * @throws Refusal if nothing is in it
     */
    public static Outcome paste(String text, Wishes wishes, Cancel cancel) throws Refusal {
        return openPaste(text, wishes, cancel).outcome();
    }

    /**
     * A pasted text, kept open so that rows can be mended one by one.
     *
     * @throws Refusal if nothing is in it
     */
    public static OpenList openPaste(String text, Wishes wishes, Cancel cancel) throws Refusal {
        return understood(TextList.of(text, wishes.mapping()), wishes, cancel);
    }

    private static OpenList understood(ListFile file, Wishes wishes, Cancel cancel) throws Refusal {
        boolean empty = file.sheets().stream().allMatch(sheet -> sheet.rows().isEmpty());
        if (empty) {
            throw Refusal.of(IntakeSays.EMPTY);
        }
        return new OpenList(file, wishes, cancel);
    }
}
