package farwatt.window.frame;

import farwatt.plan.Plan;
import farwatt.quantity.Decimal;
import farwatt.window.remember.Remembered;
import javafx.stage.Stage;

/** Makes a frame that asks by the toolkit's own windows. */
public final class FrameStart {
    private FrameStart() {}

    /** A frame for a stage. */
    public static Frame on(
            Stage stage, Frame.Threads threads, Remembered remembered, Decimal decimal, String owner, Plan first) {
        return new Frame(threads, new Dialogs(stage), remembered, decimal, owner, first);
    }
}
