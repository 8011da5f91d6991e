package farwatt.workbook;

import farwatt.report.Cancel;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Writes workbooks. The file appears under its name only when it is whole; on a refusal, a cancel or a crash the old
 * file stays and nothing is left beside it. The same content gives the same bytes. Calls may run on any thread, several
 * at a time, each with its own calculation.
 */
public final class Workbook {
    private static final double SHARE_OF_LINES = 0.8;

    static {
        // the library below would tell the terminal that nobody listens to its log
        System.setProperty("log4j2.loggerContextFactory", "org.apache.logging.log4j.simple.SimpleLoggerContextFactory");
    }

    private Workbook() {}

    /**
     * Writes the hand-over record of a plan.
     *
     * @return what had to be changed to fit into a workbook
     * @throws Refusal with one sentence if the file cannot be written
     * @throws java.util.concurrent.CancellationException when cancelled
     */
    public static List<Notice> write(Path target, Handover content, Progress progress, Cancel cancel) throws Refusal {
        Beside.check(target);
        List<NodePower> power = NodePower.of(content.calc(), content.review());
        List<Schedule> tables = Parts.of(content, power);
        Around pages = new Around() {
            @Override
            public void before(Book book, String name) {
                book.mark(Origin.of(content));
                new SummaryPage(book, name, content, tables).write(power);
            }

            @Override
            public Optional<Last> last() {
                Last labels = new Last(
                        Titles.GRID, (book, name) -> new LabelPage(book, name).write(book.places.of(Titles.LABELS)));
                return Optional.of(labels).filter(l -> content.has(Titles.LABELS));
            }
        };
        return book(target, tables, content.imprint(), progress, cancel, Titles.SUMMARY, pages);
    }

    /**
     * Writes tables, each on its own sheet.
     *
     * @return what had to be changed to fit into a workbook
     * @throws Refusal with one sentence if the file cannot be written
     * @throws java.util.concurrent.CancellationException when cancelled
     */
    public static List<Notice> write(
            Path target, List<Schedule> tables, Imprint imprint, Progress progress, Cancel cancel) throws Refusal {
        return book(target, tables, imprint, progress, cancel, "Contents", (book, name) -> {
            if (tables.size() > 1) {
                new ContentsPage(book, name, tables).write();
            }
        });
    }

    /** What stands before and after the tables; adds no sheet where there is nothing to say. */
    @FunctionalInterface
    private interface Around {
        void before(Book book, String name);

        /** A sheet after the tables. */
        default Optional<Last> last() {
            return Optional.empty();
        }
    }

    /**
     * A sheet after the tables.
     *
     * @param page writes it, under the name that was free
     */
    private record Last(String name, BiConsumer<Book, String> page) {}

    private static List<Notice> book(
            Path target,
            List<Schedule> tables,
            Imprint imprint,
            Progress progress,
            Cancel cancel,
            String firstName,
            Around pages)
            throws Refusal {
        for (Schedule table : tables) {
            Press.check(table);
        }
        List<Notice> notices = new ArrayList<>();
        Beside.write(target, out -> {
            try (Book book = new Book(new XSSFWorkbook(), imprint, cancel)) {
                fill(book, tables, firstName, pages, progress);
                progress.at(SHARE_OF_LINES, "putting the workbook together");
                cancel.check();
                book.into(out);
                cancel.check();
                notices.addAll(book.notices());
            }
        });
        progress.at(1, "done");
        return notices;
    }

    private static void fill(Book book, List<Schedule> tables, String firstName, Around pages, Progress progress) {
        List<String> wanted = new ArrayList<>();
        wanted.add(firstName);
        tables.forEach(table -> wanted.add(table.name()));
        pages.last().ifPresent(last -> wanted.add(last.name()));
        List<String> names = SheetNames.of(wanted);
        List<Places.Place> places = new ArrayList<>();
        long all = 1;
        for (int i = 0; i < tables.size(); i++) {
            String name = names.get(i + 1);
            places.add(book.places.put(tables.get(i), name));
            all += tables.get(i).lines().size();
            if (!name.equals(tables.get(i).name())) {
                book.say(Notice.of(
                        Level.NOTE,
                        WorkbookCode.SHEET_RENAMED,
                        Place.NONE,
                        tables.get(i).name(),
                        name));
            }
        }
        pages.before(book, names.get(0));
        long before = 0;
        for (Places.Place place : places) {
            double done = before;
            double whole = all;
            new Press(book, place)
                    .run(lines -> progress.at(
                            SHARE_OF_LINES * (done + lines) / whole,
                            place.schedule().name()));
            before += place.schedule().lines().size();
        }
        pages.last().ifPresent(last -> last.page().accept(book, names.get(names.size() - 1)));
    }
}
