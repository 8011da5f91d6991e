package farwatt.window.frame;

import farwatt.file.Underneath;
import farwatt.plan.Plan;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.window.WindowCode;
import farwatt.window.desk.Desk;
import farwatt.window.open.OpenFile;
import farwatt.window.remember.Remembered;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/** What a person does with the plan's file. */
final class FileDoings {
    static final String ENDING = ".farwatt.json";
    private static final String SAVE = "Save first";
    private static final String DROP = "Go on without saving";
    private static final String OVER = "Write over it";
    private static final String OTHER = "Save under another name";

    private final Desk desk;
    private final OpenFile file;
    private final Asking asking;
    private final Remembered remembered;
    private final Consumer<Notice> say;
    private final Runnable changed;

    /** @param changed told when another file is the plan's */
    FileDoings(Desk desk, OpenFile file, Asking asking, Remembered remembered, Consumer<Notice> say, Runnable changed) {
        this.desk = desk;
        this.file = file;
        this.asking = asking;
        this.remembered = remembered;
        this.say = say;
        this.changed = changed;
    }

    /** Begins an empty plan. */
    void begin() {
        unlessUnsaved(() -> {
            file.begin(Plan.EMPTY);
            changed.run();
        });
    }

    /** Asks for a plan file and opens it. */
    void open() {
        unlessUnsaved(() -> asking.open("Open a plan", List.of(ENDING, ".json")).ifPresent(this::openNow));
    }

    /** Opens a plan file. */
    void open(Path path) {
        unlessUnsaved(() -> openNow(path));
    }

    private void openNow(Path path) {
        file.open(path, refusal -> {
            if (refusal.isEmpty()) {
                remembered.opened(path);
                changed.run();
            } else {
                say.accept(refusal.get());
            }
        });
    }

    /** Saves where the plan is; a plan without a file asks where. */
    void save() {
        save(() -> {});
    }

    private void save(Runnable then) {
        file.path().ifPresentOrElse(path -> save(path, Underneath.REFUSE, then), () -> saveAs(then));
    }

    /** Asks where and saves there. */
    void saveAs() {
        saveAs(() -> {});
    }

    private void saveAs(Runnable then) {
        asking.save("Save the plan", suggested(ENDING), List.of(ENDING)).ifPresent(chosen -> {
            String name = String.valueOf(chosen.getFileName());
            Path path = name.toLowerCase(Locale.ROOT).endsWith(".json") ? chosen : chosen.resolveSibling(name + ENDING);
            boolean own = Optional.of(path).equals(file.path());
            // the toolkit has asked already whether an existing file may go
            save(path, own ? Underneath.REFUSE : Underneath.OVERWRITE, then);
        });
    }

    /** A file name made of the plan's. */
    String suggested(String ending) {
        String name = desk.base().name().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
        String plain = name.replaceAll("^-|-$", "");
        return (plain.isEmpty() ? "plan" : plain) + ending;
    }

    private void save(Path path, Underneath underneath, Runnable then) {
        file.save(path, underneath, notice -> {
            boolean done = notice.level() == Level.NOTE;
            if (done) {
                remembered.opened(path);
                changed.run();
                say.accept(notice);
                then.run();
            } else if (notice.code().equals("file.changed_underneath")) {
                asking.choose("Save", notice.text(), List.of(OTHER, OVER)).ifPresent(way -> {
                    if (way.equals(OVER)) {
                        save(path, Underneath.OVERWRITE, then);
                    } else {
                        saveAs(then);
                    }
                });
            } else {
                say.accept(notice);
            }
        });
    }

    /** Does something that gives the open plan up, after asking where there is something to lose. */
    void unlessUnsaved(Runnable then) {
        if (!file.isUnsaved()) {
            then.run();
            return;
        }
        String name = desk.base().name().isEmpty() ? "The plan" : desk.base().name();
        asking.choose("Unsaved", Messages.text(WindowCode.UNSAVED, name), List.of(SAVE, DROP))
                .ifPresent(way -> {
                    if (way.equals(SAVE)) {
                        save(then);
                    } else {
                        then.run();
                    }
                });
    }
}
