package farwatt.window.studies;

import farwatt.quantity.Decimal;
import farwatt.quantity.Reader;
import farwatt.quantity.Units;
import farwatt.report.Cancel;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import farwatt.study.Effort;
import farwatt.study.Ground;
import farwatt.study.Vary;
import farwatt.workbook.StudySheets;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One run of a study on a plan of its own that nobody changes. Made on the window's thread, run on another; the
 * window's thread may ask what was to blame once the run has ended.
 */
final class StudyRun {
    private final StudyKind kind;
    private final StudyText text;
    private final Basis basis;
    private volatile @Nullable Blame blame;

    /** A line that cannot be understood. */
    record Blame(StudyField field, int line) {}

    StudyRun(StudyKind kind, StudyText text, Basis basis) {
        this.kind = kind;
        this.text = text;
        this.basis = basis;
    }

    /** Which line the refusal was about; null where it was about none. */
    @Nullable
    Blame blame() {
        return blame;
    }

    /**
     * Works it out.
     *
     * @throws Refusal if something filled in cannot be understood
     * @throws java.util.concurrent.CancellationException if that was asked for
     */
    StudyResult run(Progress progress, Cancel cancel) throws Exception {
        cancel.check();
        Ground ground = Ground.of(basis.plan(), basis.corner());
        int threads = Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
        Effort effort = new Effort(threads, progress, cancel, System::nanoTime);
        return switch (kind) {
            case SWEEP -> new SweepStudy(this, ground, effort).result();
            case SPREAD -> new SpreadStudy(this, ground, effort).result();
            case GROW -> new OneByOne(this, ground, effort).grow();
            case LIMIT -> new OneByOne(this, ground, effort).limit();
            case SENSITIVITY -> new OneByOne(this, ground, effort).sensitivity();
            case ROOM -> new OneByOne(this, ground, effort).room();
        };
    }

    StudyResult result(List<String> said, StudyTable table, Drawing drawing, List<farwatt.workbook.StudyTable> sheets) {
        return new StudyResult(kind, basis, said, table, drawing, sheets);
    }

    /** Makes sheets that say what the study stood on. */
    StudySheets sheets() {
        return new StudySheets(basis.text());
    }

    Basis basis() {
        return basis;
    }

    /** From now on a refusal is about this line. */
    void blame(StudyField field, int line) {
        blame = new Blame(field, line);
    }

    /** The text of a field with one line, which a refusal is about from now on. */
    String line(StudyField field) {
        blame(field, 0);
        return text.line(field);
    }

    /** Lines with something in them; a refusal from now on is about the first. */
    List<String> lines(StudyField field) {
        blame(field, 0);
        return text.lines(field).stream()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
    }

    List<Vary> varies(Ground ground, StudyField field) throws Refusal {
        List<Vary> all = new ArrayList<>();
        List<String> lines = text.lines(field);
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isBlank()) {
                blame(field, i);
                all.add(Vary.of(ground, lines.get(i)));
            }
        }
        blame(field, 0);
        return all;
    }

    /** Something that may be refused for the sake of one of several expressions. */
    @FunctionalInterface
    interface Reading {
        void of(List<String> reads) throws Refusal;
    }

    /** Finds which expression is to blame for a refusal, one by one. */
    void blameRead(Reading reading) {
        List<String> lines = text.lines(StudyField.READ);
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isBlank()) {
                blame(StudyField.READ, i);
                try {
                    reading.of(List.of(lines.get(i).strip()));
                } catch (Refusal e) {
                    return;
                }
            }
        }
        blame = null;
    }

    /** A whole number as typed, with or without blanks between its digits. */
    long whole(StudyField field, long example) throws Refusal {
        String typed = line(field);
        String digits = typed.replaceAll("[\\s\\u00a0\\u202f]", "");
        if (!digits.matches("-?[0-9]{1,18}")) {
            throw Refusal.of(StudiesCode.NOT_WHOLE, typed.isEmpty() ? "Nothing" : typed, example);
        }
        return Long.parseLong(digits);
    }

    /** A share as typed. */
    double share(StudyField field, Units units) throws Refusal {
        String typed = line(field);
        return Reader.read(typed, units, Decimal.POINT)
                .filter(read -> read.unit().symbol().equals("%"))
                .orElseThrow(() -> Refusal.of(StudiesCode.NO_SHARE, typed.isEmpty() ? "Nothing" : typed))
                .inside();
    }
}
