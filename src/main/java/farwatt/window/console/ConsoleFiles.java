package farwatt.window.console;

import farwatt.picture.Palette;
import farwatt.picture.PictureFile;
import farwatt.report.Build;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Refusal;
import farwatt.script.ResultFiles;
import farwatt.script.ResultPicture;
import farwatt.script.ResultPictures;
import farwatt.script.ResultTable;
import farwatt.window.WindowCode;
import farwatt.window.desk.Desk;
import farwatt.workbook.Imprint;
import farwatt.workbook.Paper;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/** The files of the console: scripts opened and saved, results saved where a person says. For the window's thread. */
public final class ConsoleFiles {
    private static final List<String> SCRIPTS = List.of(".js", ".mjs");
    private static final List<String> TABLES = List.of(".csv", ".xlsx");
    private static final List<String> PICTURES = List.of(".png", ".svg");
    private static final String SAVE = "Save first";
    private static final String DROP = "Go on without saving";

    /** What is asked of a person in between. */
    public interface Asking {
        Optional<Path> open(String title, List<String> endings);

        Optional<Path> save(String title, String suggested, List<String> endings);

        Optional<String> choose(String title, String question, List<String> ways);
    }

    private final Asking asking;
    private final Papers papers;
    private final Desk desk;
    private final Executor disk;
    private final Executor home;
    private final Consumer<Notice> say;

    /**
     * The files of one console.
     *
     * @param disk reads and writes, one task after another
     * @param home the window's thread
     * @param say tells how it went
     */
    public ConsoleFiles(Asking asking, Papers papers, Desk desk, Executor disk, Executor home, Consumer<Notice> say) {
        this.asking = asking;
        this.papers = papers;
        this.desk = desk;
        this.disk = disk;
        this.home = home;
        this.say = say;
    }

    /** Asks for a script and opens it. */
    void open(Runnable then) {
        unlessUnsaved(() -> asking.open("Open a script", SCRIPTS)
                .ifPresent(path -> papers.open(path, wrong -> {
                    wrong.ifPresent(say);
                    then.run();
                })));
    }

    /** Lays a sample out. */
    void sample(String name, Runnable then) {
        unlessUnsaved(() -> {
            papers.sample(name);
            then.run();
        });
    }

    /** Goes back to the lines. */
    void lines(Runnable then) {
        unlessUnsaved(() -> {
            papers.lines();
            then.run();
        });
    }

    /** Saves the script where it is, or where a person says. */
    void save(Runnable then) {
        papers.now().path().ifPresentOrElse(path -> save(path, then), () -> saveAs(then));
    }

    void saveAs(Runnable then) {
        String name = papers.now().isLines() ? "lines.js" : papers.now().name();
        asking.save("Save the script", name, SCRIPTS).ifPresent(path -> save(path, then));
    }

    private void save(Path path, Runnable then) {
        papers.save(path, notice -> {
            say.accept(notice);
            if (notice.level() == Level.NOTE) {
                then.run();
            }
        });
    }

    private void unlessUnsaved(Runnable then) {
        Papers.Paper now = papers.now();
        if (!now.isUnsaved()) {
            then.run();
            return;
        }
        String question = Messages.text(ConsoleCode.UNSAVED, now.name());
        asking.choose("Script", question, List.of(SAVE, DROP)).ifPresent(way -> {
            if (way.equals(SAVE)) {
                save(then);
            } else {
                then.run();
            }
        });
    }

    /** Saves a table where a person says. */
    void save(String suggested, ResultTable table) {
        Imprint imprint = imprint();
        asking.save("Save the table", suggested, TABLES).ifPresent(chosen -> {
            Path path = ended(chosen, TABLES);
            Path folder = path.toAbsolutePath().getParent();
            write(() -> new ResultFiles(folder == null ? path : folder, imprint)
                    .save(String.valueOf(path.getFileName()), table));
        });
    }

    private Imprint imprint() {
        return new Imprint(
                desk.base().name(),
                Build.version(),
                Optional.empty(),
                LocalDate.now(ZoneId.systemDefault()),
                Paper.of(Locale.getDefault().getCountry()));
    }

    /** Saves a picture where a person says, in the colours of print. */
    void save(ResultPicture picture, String origin) {
        String suggested = picture.file().orElse(picture.column().replaceAll("[^\\p{L}\\p{N}]+", "-") + ".png");
        asking.save("Save the picture", suggested, PICTURES).ifPresent(chosen -> {
            Path path = ended(chosen, PICTURES);
            write(() -> {
                PictureFile.write(ResultPictures.of(picture, origin, Palette.LIGHT), path);
                return path;
            });
        });
    }

    private static Path ended(Path chosen, List<String> endings) {
        String name = String.valueOf(chosen.getFileName());
        boolean ends = endings.stream().anyMatch(name.toLowerCase(Locale.ROOT)::endsWith);
        return ends ? chosen : chosen.resolveSibling(name + endings.get(0));
    }

    private interface Writing {
        Path write() throws Refusal;
    }

    private void write(Writing writing) {
        disk.execute(() -> {
            Notice notice;
            try {
                notice = Notice.of(Level.NOTE, WindowCode.WRITTEN, Place.NONE, writing.write());
            } catch (Refusal e) {
                notice = e.notice();
            }
            Notice said = notice;
            home.execute(() -> say.accept(said));
        });
    }
}
