package farwatt.window.open;

import farwatt.engine.PlanWording;
import farwatt.file.Access;
import farwatt.file.Fingerprint;
import farwatt.file.JournalFile;
import farwatt.file.Opened;
import farwatt.file.PlanLock;
import farwatt.file.PlanReader;
import farwatt.file.Recovered;
import farwatt.file.SafeSave;
import farwatt.file.Underneath;
import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Refusal;
import farwatt.window.WindowCode;
import farwatt.window.desk.Desk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * The file of the plan on the desk. Reading, saving and the journal go on the disk executor, one task after another;
 * the rest is confined to the window's thread.
 */
public final class OpenFile {
    /** Windows without a file that each have a journal of their own. */
    private static final int MOST_UNNAMED = 20;

    private final Desk desk;
    private final Executor disk;
    private final Executor home;
    private final Consumer<Notice> say;
    private final Path unnamedJournal;
    private final String owner;
    private @Nullable Path path;
    private Fingerprint fingerprint = Fingerprint.NONE;
    private Access access = Access.EDIT;
    private @Nullable PlanLock lock;
    private boolean taking;
    /** Only on the disk executor. */
    private @Nullable JournalFile journal;

    private boolean journalFailed;

    /**
     * For one desk.
     *
     * @param disk runs one task after another
     * @param home the window's thread
     * @param unnamedJournal where unsaved changes of a plan without a file are kept
     * @param owner what others are told who open the same plan
     */
    public OpenFile(Desk desk, Executor disk, Executor home, Consumer<Notice> say, Path unnamedJournal, String owner) {
        this.desk = desk;
        this.disk = disk;
        this.home = home;
        this.say = say;
        this.unnamedJournal = unnamedJournal;
        this.owner = owner;
        desk.journal(this::noted);
    }

    /** Where the plan is; empty for one that was never saved. */
    public Optional<Path> path() {
        return Optional.ofNullable(path);
    }

    /** Fingerprint of the file as opened or saved last. */
    public Fingerprint fingerprint() {
        return fingerprint;
    }

    /** True where there is something to lose. */
    public boolean isUnsaved() {
        return !desk.document().isSaved();
    }

    /** Puts a plan on the desk that has no file; changes that a crash left of it come back. */
    public void begin(Plan plan) {
        release();
        path = null;
        fingerprint = Fingerprint.NONE;
        access = Access.EDIT;
        desk.open(plan);
        resume(ownJournal(), Fingerprint.NONE);
    }

    /** The journal of a plan without a file; another window that has one open keeps its own. */
    private Path ownJournal() {
        Path file = unnamedJournal;
        for (int next = 2; next <= MOST_UNNAMED; next++) {
            PlanLock.Outcome outcome = PlanLock.take(file, owner);
            if (outcome instanceof PlanLock.Outcome.Held held) {
                lock = held.lock();
                return file;
            }
            if (outcome instanceof PlanLock.Outcome.Unknown) {
                return file;
            }
            file = unnamedJournal.resolveSibling(next + "-" + unnamedJournal.getFileName());
        }
        return file;
    }

    /** Reads a plan file and puts it on the desk; the answer is empty, or says why it was not opened. */
    public void open(Path file, Consumer<Optional<Notice>> answer) {
        disk.execute(() -> {
            try {
                Opened opened = PlanReader.read(file);
                home.execute(() -> {
                    install(file, opened);
                    answer.accept(Optional.empty());
                });
            } catch (Refusal e) {
                home.execute(() -> answer.accept(Optional.of(e.notice())));
            }
        });
    }

    private void install(Path file, Opened opened) {
        release();
        path = file;
        fingerprint = opened.fingerprint();
        access = opened.access();
        desk.open(opened.plan());
        opened.notices().forEach(say);
        if (access == Access.READ_ONLY) {
            say.accept(Notice.of(Level.WARN, WindowCode.READ_ONLY, Place.NONE, file.getFileName()));
            return;
        }
        lock(file);
        resume(JournalFile.beside(file), fingerprint);
    }

    private void lock(Path file) {
        PlanLock.Outcome outcome = PlanLock.take(file, owner);
        if (outcome instanceof PlanLock.Outcome.Held held) {
            lock = held.lock();
        } else if (outcome instanceof PlanLock.Outcome.Elsewhere elsewhere) {
            say.accept(Notice.of(
                    Level.WARN, WindowCode.OPEN_ELSEWHERE, Place.NONE, file.getFileName(), elsewhere.owner()));
        }
    }

    /** Takes over what a crash left, as one step, and goes on with a journal. */
    private void resume(Path file, Fingerprint on) {
        disk.execute(() -> {
            Optional<Recovered> found;
            try {
                found = JournalFile.recover(file, on);
                journal = found.isPresent() ? JournalFile.resume(file) : JournalFile.start(file, on);
            } catch (IOException e) {
                found = Optional.empty();
                journal = JournalFile.start(file, on);
            }
            found.filter(some -> !some.changes().isEmpty()).ifPresent(some -> home.execute(() -> takeOver(some)));
        });
    }

    private void takeOver(Recovered found) {
        Change.Batch batch = found.fitting(desk.base(), "Changes found again");
        taking = true;
        try {
            desk.document().apply(batch);
        } finally {
            taking = false;
        }
        boolean same = found.basis() == Recovered.Basis.SAME_FILE;
        say.accept(Notice.of(
                Level.WARN,
                same ? WindowCode.RECOVERED : WindowCode.RECOVERED_OTHER,
                Place.NONE,
                found.changes().size(),
                batch.changes().size()));
    }

    private void noted(Change change) {
        if (taking || access == Access.READ_ONLY) {
            return;
        }
        disk.execute(() -> {
            JournalFile open = journal;
            if (open == null) {
                return;
            }
            try {
                open.add(change);
            } catch (IOException e) {
                failed(e);
            }
        });
    }

    /** To be called every second: puts what was added to the journal on the disk. */
    public void flush() {
        disk.execute(() -> {
            JournalFile open = journal;
            try {
                if (open != null) {
                    open.flush();
                }
            } catch (IOException e) {
                failed(e);
            }
        });
    }

    private void failed(IOException e) {
        String why = String.valueOf(e.getMessage());
        home.execute(() -> {
            if (!journalFailed) {
                journalFailed = true;
                say.accept(Notice.of(Level.WARN, WindowCode.JOURNAL_FAILED, Place.NONE, why));
            }
        });
    }

    /** Says whether the file is another one than was opened or saved last. */
    public void lookUnderneath(Consumer<Notice> changed) {
        Path file = path;
        Fingerprint known = fingerprint;
        if (file == null) {
            return;
        }
        disk.execute(() -> {
            try {
                boolean same = !Files.exists(file)
                        || Fingerprint.of(Files.readAllBytes(file)).equals(known);
                if (!same) {
                    home.execute(() -> changed.accept(
                            Notice.of(Level.WARN, WindowCode.CHANGED_UNDERNEATH, Place.NONE, file.getFileName())));
                }
            } catch (IOException e) {
                // it will be said when it is saved
                return;
            }
        });
    }

    /**
     * Saves to a file, which becomes the plan's; edits may go on meanwhile.
     *
     * @param answer told how it went
     */
    public void save(Path file, Underneath underneath, Consumer<Notice> answer) {
        boolean own = file.equals(path);
        Plan plan = desk.base().version() > Plan.VERSION && !own ? desk.base().withVersion(Plan.VERSION) : desk.base();
        Fingerprint opened = own ? fingerprint : Fingerprint.NONE;
        var mark = desk.document().mark();
        disk.execute(() -> {
            try {
                Fingerprint next = own && journal != null
                        ? new SafeSave().save(plan, file, PlanWording.canonicalFor(plan), opened, underneath, journal)
                        : elsewhere(plan, file, opened, underneath);
                home.execute(() -> {
                    desk.document().markSaved(mark);
                    saved(file, next);
                    answer.accept(Notice.of(Level.NOTE, WindowCode.SAVED, Place.NONE, file.getFileName()));
                });
            } catch (Refusal e) {
                home.execute(() -> answer.accept(e.notice()));
            }
        });
    }

    private Fingerprint elsewhere(Plan plan, Path file, Fingerprint opened, Underneath underneath) throws Refusal {
        Fingerprint next = new SafeSave().save(plan, file, PlanWording.canonicalFor(plan), opened, underneath);
        JournalFile before = journal;
        journal = JournalFile.start(JournalFile.beside(file), next);
        if (before != null) {
            try {
                before.discard();
            } catch (IOException e) {
                failed(e);
            }
        }
        return next;
    }

    private void saved(Path file, Fingerprint next) {
        if (!file.equals(path)) {
            closeLock();
            path = file;
            access = Access.EDIT;
            lock(file);
        }
        fingerprint = next;
    }

    /** Lets go of file, lock and journal: what was not saved is given up. */
    public void release() {
        closeLock();
        disk.execute(() -> {
            JournalFile open = journal;
            journal = null;
            try {
                if (open != null) {
                    open.discard();
                }
            } catch (IOException e) {
                failed(e);
            }
        });
    }

    private void closeLock() {
        PlanLock held = lock;
        lock = null;
        try {
            if (held != null) {
                held.close();
            }
        } catch (IOException e) {
            say.accept(Notice.of(Level.NOTE, WindowCode.JOURNAL_FAILED, Place.NONE, String.valueOf(e.getMessage())));
        }
    }
}
