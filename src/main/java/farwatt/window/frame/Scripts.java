package farwatt.window.frame;

import farwatt.plan.Table;
import farwatt.report.Notice;
import farwatt.report.Refusal;
import farwatt.script.Limits;
import farwatt.script.ScriptHost;
import farwatt.window.console.ConsoleFiles;
import farwatt.window.console.ConsoleModel;
import farwatt.window.console.ConsoleView;
import farwatt.window.console.History;
import farwatt.window.console.Papers;
import farwatt.window.desk.Desk;
import farwatt.window.desk.DeskSheet;
import farwatt.window.remember.Remembered;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;

/** The console with the process that runs its scripts, which is started when the console is first looked at. */
final class Scripts {
    /** What it is called on the bench. */
    static final String WORD = "Scripts";

    private final ScriptHost host = new ScriptHost(Limits.USUAL);
    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "farwatt scripts");
        thread.setDaemon(true);
        return thread;
    });
    private final ConsoleModel model;
    private final ConsoleView view;

    Scripts(
            Desk desk,
            DeskSheet sheet,
            Frame.Threads threads,
            Asking asking,
            Remembered remembered,
            Consumer<Notice> say) {
        Papers papers = new Papers(threads.disk(), threads.home());
        model = new ConsoleModel(desk, host::run, worker, threads.home(), new History(remembered));
        ConsoleFiles files = new ConsoleFiles(new Asked(asking), papers, desk, threads.disk(), threads.home(), say);
        view = new ConsoleView(
                desk,
                model,
                papers,
                files,
                (expression, caret) -> sheet.complete(Table.VALUES, "", "is", expression, caret),
                say);
        view.onLaid(() -> worker.execute(this::warmUp));
    }

    private void warmUp() {
        try {
            host.warmUp();
        } catch (Refusal e) {
            // the first run says so
            return;
        }
    }

    ConsoleView view() {
        return view;
    }

    /** Ends what runs and the process with it. */
    void close() {
        model.cancel();
        worker.execute(host::close);
        worker.shutdown();
    }

    /** Asks by what the window asks with. */
    private record Asked(Asking asking) implements ConsoleFiles.Asking {
        @Override
        public Optional<Path> open(String title, List<String> endings) {
            return asking.open(title, endings);
        }

        @Override
        public Optional<Path> save(String title, String suggested, List<String> endings) {
            return asking.save(title, suggested, endings);
        }

        @Override
        public Optional<String> choose(String title, String question, List<String> ways) {
            return asking.choose(title, question, ways);
        }
    }
}
