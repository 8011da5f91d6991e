package farwatt.window;

import farwatt.plan.Plan;
import farwatt.quantity.Decimal;
import farwatt.window.frame.Frame;
import farwatt.window.frame.FrameStart;
import farwatt.window.remember.Remembered;
import java.nio.file.Path;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;
import javafx.util.Duration;

/** The window as the toolkit starts it. */
public final class FarwattWindow extends Application {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 720;

    private final List<ExecutorService> threads =
            List.of(thread("engine"), thread("disk"), thread("work"), thread("drawing"));

    private static ExecutorService thread(String name) {
        return Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, "farwatt " + name);
            thread.setDaemon(true);
            return thread;
        });
    }

    @Override
    public void start(Stage stage) throws Exception {
        Remembered remembered = new Remembered(folder().resolve("remembered.properties"));
        Plan first = WindowStart.demo();
        Frame.Threads on =
                new Frame.Threads(threads.get(0), threads.get(1), threads.get(2), threads.get(3), Platform::runLater);
        char sign = DecimalFormatSymbols.getInstance(Locale.getDefault(Locale.Category.FORMAT))
                .getDecimalSeparator();
        Decimal decimal = sign == ',' ? Decimal.COMMA : Decimal.POINT;
        String owner = System.getProperty("user.name", "someone");
        Frame frame = FrameStart.on(stage, on, remembered, decimal, owner, first);
        Scene scene = new Scene(frame, WIDTH, HEIGHT);
        scene.getStylesheets()
                .add(Objects.requireNonNull(WindowStart.class.getResource("/farwatt/window/farwatt.css"))
                        .toExternalForm());
        stage.setScene(scene);
        stage.setTitle("Farwatt");
        stage.setOnCloseRequest(e -> {
            e.consume();
            frame.closing(Platform::exit);
        });
        stage.show();
        Timeline flush =
                new Timeline(new KeyFrame(Duration.seconds(1), e -> frame.file().flush()));
        flush.setCycleCount(Timeline.INDEFINITE);
        flush.play();
        stage.focusedProperty().addListener((o, was, is) -> {
            if (is) {
                frame.file().lookUnderneath(frame::say);
            }
        });
        getParameters().getUnnamed().stream().findFirst().map(Path::of).ifPresent(frame::open);
    }

    /** Where a program keeps what it remembers about a person. */
    private static Path folder() {
        String own = System.getProperty("farwatt.home", "");
        return own.isEmpty() ? Path.of(System.getProperty("user.home", "."), ".farwatt") : Path.of(own);
    }

    @Override
    public void stop() {
        threads.forEach(ExecutorService::shutdown);
    }
}
