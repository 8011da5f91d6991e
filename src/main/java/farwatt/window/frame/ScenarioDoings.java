package farwatt.window.frame;

import farwatt.plan.Change;
import farwatt.plan.Naming;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Scenario;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Refusal;
import farwatt.review.Remedy;
import farwatt.window.WindowCode;
import farwatt.window.desk.Desk;
import farwatt.window.why.WhyView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** What a person does with scenarios. */
final class ScenarioDoings implements WhyView.Mending {
    private static final String NONE = "the plan as it is";

    private final Desk desk;
    private final Asking asking;
    private final Consumer<Notice> say;

    ScenarioDoings(Desk desk, Asking asking, Consumer<Notice> say) {
        this.desk = desk;
        this.asking = asking;
        this.say = say;
    }

    /** Makes one on the one looked at. */
    void begin() {
        asking.text("New scenario", "What is it called?", free("scenario"))
                .ifPresent(name -> tried(() -> desk.tryOut(name, desk.scenario(), List.of())));
    }

    void rename(String id) {
        desk.base()
                .scenario(id)
                .ifPresent(scenario -> asking.text("Scenario", "What is it called?", scenario.id())
                        .ifPresent(
                                name -> tried(() -> desk.changeScenario(scenario.id(), name.strip(), scenario.on()))));
    }

    void duplicate(String id) {
        desk.base()
                .scenario(id)
                .ifPresent(scenario -> tried(() -> desk.tryOut(free(scenario.id()), scenario.on(), scenario.steps())));
    }

    void standOn(String id) {
        Optional<Scenario> scenario = desk.base().scenario(id);
        List<String> others = new ArrayList<>(List.of(NONE));
        desk.base().scenarios().stream()
                .map(Scenario::id)
                .filter(o -> !o.equals(id))
                .forEach(others::add);
        scenario.ifPresent(s -> asking.choose("Scenario", s.id() + " stands on", others)
                .ifPresent(on -> tried(() -> desk.changeScenario(s.id(), s.id(), on.equals(NONE) ? "" : on))));
    }

    @Override
    public void attempt(Remedy remedy) {
        tried(() -> desk.tryOut(free(shortened(remedy.text())), desk.scenario(), remedy.changes()));
    }

    /** What is changed, without what it brings. */
    private static String shortened(String text) {
        int colon = text.indexOf(':');
        return colon > 0 ? text.substring(0, colon) : text;
    }

    @Override
    public void apply(Remedy remedy) {
        tried(() -> {
            Optional<Change> change = remedy.change(desk.shown());
            if (change.isEmpty()) {
                throw new Refusal(Notice.of(Level.NOTE, WindowCode.REMEDY_GONE, Place.NONE));
            }
            desk.apply(change.get());
        });
    }

    void remove(String id) {
        tried(() -> desk.removeScenario(id));
    }

    private String free(String id) {
        List<Row> rows =
                desk.base().scenarios().stream().map(s -> Row.of(s.id())).toList();
        return Naming.in(Rows.of(rows)).free(id);
    }

    private interface Doing {
        void run() throws Refusal;
    }

    private void tried(Doing doing) {
        try {
            doing.run();
        } catch (Refusal e) {
            say.accept(e.notice());
        }
    }
}
