package farwatt.window.console;

import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Refusal;
import farwatt.script.Script;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * What is being written: lines that are run one after another, or a whole script from a file or from the samples. Files
 * are read and written away from the window. For the window's thread.
 */
public final class Papers {
    /**
     * One text.
     *
     * @param name what it is called; "" for lines
     * @param path where it is saved; empty for lines and samples
     * @param text as it is now
     * @param saved as it was opened or saved last
     */
    public record Paper(String name, Optional<Path> path, String text, String saved) {
        /** True for lines that are run one after another. */
        public boolean isLines() {
            return name.isEmpty();
        }

        /** True for a script with changes that are nowhere else. */
        public boolean isUnsaved() {
            return !isLines() && !text.equals(saved);
        }

        Paper with(String other) {
            return new Paper(name, path, other, saved);
        }

        /** What is to be run. */
        public Script script() {
            if (isLines()) {
                return Script.line(text);
            }
            return new Script(name, text, path.map(Path::getParent), Script.Kind.FILE);
        }
    }

    private static final Paper NO_LINES = new Paper("", Optional.empty(), "", "");

    private final Executor disk;
    private final Executor home;
    private Paper now = NO_LINES;
    private Paper lines = NO_LINES;

    /**
     * The papers of one console.
     *
     * @param disk reads and writes files, one task after another
     * @param home the window's thread
     */
    public Papers(Executor disk, Executor home) {
        this.disk = disk;
        this.home = home;
    }

    public Paper now() {
        return now;
    }

    /** Takes over what was typed. */
    public void write(String text) {
        now = now.with(text);
    }

    /** Goes back to the lines. */
    public void lines() {
        lay(lines);
    }

    private void lay(Paper paper) {
        if (now.isLines()) {
            lines = now;
        }
        now = paper;
    }

    /** Opens a copy of a sample, which is saved elsewhere. */
    public void sample(String name) {
        String text = Samples.text(name);
        lay(new Paper(name, Optional.empty(), text, text));
    }

    /** Opens a script; told what was wrong, or nothing, when it is there. */
    public void open(Path path, Consumer<Optional<Notice>> then) {
        disk.execute(() -> {
            try {
                Script script = Script.file(path);
                Path real = path.toRealPath();
                home.execute(() -> {
                    lay(new Paper(script.name(), Optional.of(real), script.text(), script.text()));
                    then.accept(Optional.empty());
                });
            } catch (Refusal e) {
                home.execute(() -> then.accept(Optional.of(e.notice())));
            } catch (IOException e) {
                Notice notice = Notice.of(Level.FAIL, ConsoleCode.NOT_OPENED, Place.NONE, path, reason(e));
                home.execute(() -> then.accept(Optional.of(notice)));
            }
        });
    }

    /** Saves what is being written; told how it went. */
    public void save(Path chosen, Consumer<Notice> then) {
        String file = String.valueOf(chosen.getFileName());
        boolean named = file.endsWith(".js") || file.endsWith(".mjs");
        Path path = named ? chosen : chosen.resolveSibling(file + ".js");
        Paper paper = now;
        disk.execute(() -> {
            try {
                put(paper.text(), path);
                Path real = path.toRealPath();
                home.execute(() -> saved(paper, real, then));
            } catch (IOException e) {
                Notice notice = Notice.of(Level.FAIL, ConsoleCode.NOT_SAVED, Place.NONE, path, reason(e));
                home.execute(() -> then.accept(notice));
            }
        });
    }

    private void saved(Paper paper, Path real, Consumer<Notice> then) {
        String name = String.valueOf(real.getFileName());
        boolean same = now.name().equals(paper.name()) && now.path().equals(paper.path());
        if (same) {
            String text = now.text();
            // lines that were saved stay lines too
            lay(new Paper(name, Optional.of(real), text, paper.text()));
        }
        then.accept(Notice.of(Level.NOTE, ConsoleCode.SAVED, Place.NONE, real));
    }

    /** Written beside its place and put there whole. */
    private static void put(String text, Path path) throws IOException {
        Path target = Files.exists(path) ? path.toRealPath() : path.toAbsolutePath();
        Path part = Files.createTempFile(target.getParent(), ".", ".part");
        try {
            Files.writeString(part, text, StandardCharsets.UTF_8);
            if (Files.isDirectory(target)) {
                throw new IOException("there is a folder of that name");
            }
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static String reason(IOException e) {
        if (e instanceof java.nio.file.AccessDeniedException) {
            return "writing there is not allowed";
        }
        if (e instanceof java.nio.file.NoSuchFileException) {
            return "there is no such folder";
        }
        String said = e instanceof java.nio.file.FileSystemException file ? file.getReason() : e.getMessage();
        return said == null || said.isBlank() ? "the disk gave no reason" : said;
    }
}
