package farwatt.window.frame;

import farwatt.window.desk.UnitsShown;
import farwatt.window.top.TopLine;

/** What the top line starts. */
final class Doings implements TopLine.Doings {
    private final Frame frame;

    Doings(Frame frame) {
        this.frame = frame;
    }

    @Override
    public void undo() {
        frame.grid().commit();
        frame.desk().undo();
    }

    @Override
    public void redo() {
        frame.grid().commit();
        frame.desk().redo();
    }

    @Override
    public void find() {
        frame.grid().find();
    }

    @Override
    public void units() {
        frame.look().units(frame.sheet().units() == UnitsShown.METRIC ? UnitsShown.IMPERIAL : UnitsShown.METRIC);
    }

    @Override
    public void newScenario() {
        frame.grid().commit();
        frame.scenarios().begin();
    }

    @Override
    public void renameScenario(String id) {
        frame.scenarios().rename(id);
    }

    @Override
    public void duplicateScenario(String id) {
        frame.scenarios().duplicate(id);
    }

    @Override
    public void standOn(String id) {
        frame.scenarios().standOn(id);
    }

    @Override
    public void removeScenario(String id) {
        frame.scenarios().remove(id);
    }
}
