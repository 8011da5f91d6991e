package farwatt.window.frame;

import farwatt.engine.Corner;
import farwatt.intake.Taken;
import farwatt.picture.Palette;
import farwatt.plan.Plan;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import farwatt.report.Notice;
import farwatt.window.back.BackModel;
import farwatt.window.back.BackView;
import farwatt.window.bench.BenchView;
import farwatt.window.bench.Late;
import farwatt.window.compare.CompareView;
import farwatt.window.desk.Desk;
import farwatt.window.desk.DeskSheet;
import farwatt.window.desk.UnitsShown;
import farwatt.window.diagram.DiagramModel;
import farwatt.window.diagram.DiagramView;
import farwatt.window.grid.GridView;
import farwatt.window.list.ListView;
import farwatt.window.open.OpenFile;
import farwatt.window.remember.Remembered;
import farwatt.window.studies.StudiesView;
import farwatt.window.takeoff.TakeOffModel;
import farwatt.window.takeoff.TakeOffView;
import farwatt.window.top.TopLine;
import farwatt.window.why.WhyView;
import farwatt.window.work.Work;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Executor;
import javafx.geometry.Orientation;
import javafx.scene.control.SplitPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;

/** The window's content, put together. For the window's thread. */
public final class Frame extends BorderPane {
    /** How much of the height stays above the bench when it opens. */
    private static final double BENCH = 0.55;

    /** The same where there is a picture on it. */
    private static final double HIGH_BENCH = 0.4;

    static final String STUDIES = "Studies";

    private final Desk desk;
    private final DeskSheet sheet;
    private final OpenFile file;
    private final Talk talk;
    private final Work work;
    private final GridView grid;
    private final TopLine top;
    private final WhyView why;
    private final Look look;
    private final FileDoings files;
    private final ScenarioDoings scenarios;
    private final BenchView bench = new BenchView(this::benchFolded);
    private final Late<ListView> list;
    private final Late<BackView> back;
    private final Late<StudiesView> studies;
    private final Late<Scripts> scripts;
    private final DiagramView diagram;
    private final Sides sides;
    private final VBox foot = new VBox();
    private final SplitPane stack = new SplitPane();

    /**
     * What the frame stands on.
     *
     * @param engine works plans out, one task after another
     * @param disk reads and writes the plan's file, one task after another
     * @param work what takes long: lists, workbooks, studies
     * @param drawing lays diagrams out
     * @param home the window's thread
     */
    public record Threads(Executor engine, Executor disk, Executor work, Executor drawing, Executor home) {}

    public Frame(Threads threads, Asking asking, Remembered remembered, Decimal decimal, String owner, Plan first) {
        getStyleClass().add("fw-root");
        desk = new Desk(threads.engine(), threads.home(), first);
        talk = new Talk(this::cancel);
        work = new Work(threads.work(), threads.home(), talk::show);
        desk.listen(talk::say);
        sheet = new DeskSheet(desk, decimal, talk::say);
        Path unnamed = remembered.folder().resolve("unnamed.journal");
        file = new OpenFile(desk, threads.disk(), threads.home(), talk::say, unnamed, owner);
        files = new FileDoings(desk, file, asking, remembered, talk::say, this::changed);
        scenarios = new ScenarioDoings(desk, asking, talk::say);
        grid = new GridView(sheet);
        why = new WhyView(desk, this::point, scenarios);
        look = new Look(this, remembered);
        Menus menus = new Menus(this, files, look, remembered, work, asking);
        top = new TopLine(desk, sheet, new Doings(this), menus.plan(), menus.show());
        sheet.show(UnitsShown.valueOf(remembered.get("units", UnitsShown.METRIC.name())));
        sheet.onExplain(this::explained);
        sheet.onPointed(this::pointed);
        list = new Late<>(() -> new ListView(desk, work, new ListQuestions(asking), talk::say, this::takenIn));
        bench.add("Side by side", new Late<>(() -> new CompareView(desk, work, talk::say)));
        bench.add("List", list);
        back = new Late<>(() -> new BackView(
                new BackModel(desk, file, work),
                desk,
                () -> asking.open("Take a workbook back", List.of(".xlsx")),
                talk::say));
        bench.add("Take-off", new Late<>(() -> new TakeOffView(new TakeOffModel(desk, sheet::units), desk, talk::say)));
        bench.add("Workbook back", back);
        studies = new Late<>(() -> studies(decimal, threads, asking));
        bench.add(STUDIES, studies);
        DiagramModel drawn = new DiagramModel(desk, threads.drawing(), threads.home());
        diagram = new DiagramView(drawn, desk, (table, id) -> grid.point(table, id, ""), menus::picture);
        scripts = new Late<>(() -> scripts(threads, asking, remembered));
        bench.add(Scripts.WORD, () -> scripts.get().view());
        sides = new Sides(diagram, grid, why, this::roomChanged);
        arrange(new FirstSteps(remembered));
        new Keys(this, files, scenarios).install();
        file.begin(first);
        look.apply();
    }

    private StudiesView studies(Decimal decimal, Threads threads, Asking asking) {
        StudiesView made = new StudiesView(
                desk,
                decimal,
                threads.home(),
                work,
                (title, endings) -> asking.save(title, files.suggested(endings.get(0)), endings),
                talk::say);
        made.show(look.palette());
        return made;
    }

    private Scripts scripts(Threads threads, Asking asking, Remembered remembered) {
        Scripts made = new Scripts(desk, sheet, threads, asking, remembered, talk::say);
        made.view().show(look.palette());
        return made;
    }

    private void arrange(FirstSteps steps) {
        stack.setOrientation(Orientation.VERTICAL);
        stack.getItems().add(sides);
        setTop(new VBox(top, steps));
        setCenter(stack);
        setBottom(foot);
        benchFolded();
    }

    private void explained(Table table, List<String> ids, String name) {
        why.choose(table, ids.get(0), name);
        enter(Sides.Part.WHY);
    }

    private void pointed(Table table, List<String> ids, String name) {
        if (!ids.isEmpty()) {
            why.choose(table, ids.get(0), name);
            diagram.choose(ids.get(0));
        }
    }

    /** Shows the devices that a list brought, and the verdict over them. */
    private void takenIn(Taken taken) {
        bench.done();
        taken.added().stream()
                .filter(id -> desk.shown().rows(Table.DEVICES).row(id).isPresent())
                .findFirst()
                .ifPresent(id -> grid.point(Table.DEVICES, id, "draw"));
        enter(Sides.Part.GRID);
    }

    private void changed() {
        talk.requestLayout();
    }

    /** Folded away, only the words of what can lie on the bench stay, at the foot. */
    private void benchFolded() {
        stack.getItems().clear();
        foot.getChildren().setAll(talk);
        if (bench.isWhole()) {
            stack.getItems().setAll(bench);
        } else if (bench.isOpen()) {
            stack.getItems().setAll(sides, bench);
            stack.setDividerPositions(bench.lies().equals(STUDIES) ? HIGH_BENCH : BENCH);
        } else {
            stack.getItems().setAll(sides);
            foot.getChildren().add(0, bench);
        }
    }

    private void roomChanged() {
        top.terse(sides.isSingle());
    }

    /** Letters have another height now, in pixels. */
    void letters(double pixels) {
        sides.letters(pixels);
        diagram.letters(pixels);
    }

    private void point(Table table, String id, String name) {
        sides.show(Sides.Part.GRID);
        grid.point(table, id, name);
    }

    /** Takes the cursor to one of the parts above the bench. */
    void enter(Sides.Part part) {
        sides.show(part);
        switch (part) {
            case DIAGRAM -> diagram.enter();
            case GRID -> grid.toCells();
            case WHY -> why.enter();
        }
    }

    /** Takes the cursor to the findings. */
    void enterFindings() {
        sides.show(Sides.Part.WHY);
        why.enterFindings();
    }

    /** Goes to the studies at the bench. */
    void study() {
        grid.commit();
        bench.show(STUDIES);
        studies.get().enter();
    }

    BenchView bench() {
        return bench;
    }

    BackView back() {
        return back.get();
    }

    Scripts scripts() {
        return scripts.get();
    }

    /** True for keys that mean the script that is written. */
    boolean isScripting(KeyEvent e) {
        return bench.lies().equals(Scripts.WORD) && scripts.get().view().takes(e);
    }

    /** Takes the keyboard to what lies on the bench. */
    void enterBench() {
        switch (bench.lies()) {
            case Scripts.WORD -> scripts.get().view().enter();
            case STUDIES -> studies.get().enter();
            default -> bench.enter();
        }
    }

    /** Shows pictures in the colours of the theme. */
    void colour(Palette palette) {
        diagram.show(palette);
        studies.ifMade(made -> made.show(palette));
        scripts.ifMade(made -> made.view().show(palette));
    }

    ListView list() {
        return list.get();
    }

    private void cancel() {
        work.cancel();
    }

    /** Says something at the foot. */
    public void say(Notice notice) {
        talk.say(notice);
    }

    /** What stands at the foot now. */
    public String said() {
        return talk.shown();
    }

    public Desk desk() {
        return desk;
    }

    public OpenFile file() {
        return file;
    }

    DeskSheet sheet() {
        return sheet;
    }

    GridView grid() {
        return grid;
    }

    /** Studies at the bench. */
    public StudiesView studies() {
        return studies.get();
    }

    DiagramView diagram() {
        return diagram;
    }

    WhyView why() {
        return why;
    }

    TopLine top() {
        return top;
    }

    ScenarioDoings scenarios() {
        return scenarios;
    }

    Look look() {
        return look;
    }

    /** Opens a plan file, as from the command line. */
    public void open(Path path) {
        files.open(path);
    }

    /** Puts the cursor on a cell. */
    public void showTable(Table table, String id, String name) {
        grid.point(table, id, name);
        enter(Sides.Part.GRID);
    }

    /** What can lie on the bench. */
    public List<String> places() {
        return bench.places();
    }

    /** Puts a thing on the bench, or with "" folds it away. */
    public void put(String place) {
        if (place.isEmpty()) {
            bench.fold();
        } else {
            bench.show(place);
        }
    }

    /** Looks at a corner. */
    public void look(Corner corner) {
        desk.look(corner);
    }

    /** Does something that closes the window, after asking where there is something to lose. */
    public void closing(Runnable then) {
        grid.commit();
        files.unlessUnsaved(() -> {
            file.release();
            close();
            then.run();
        });
    }

    /** Ends what runs beside the window. */
    public void close() {
        scripts.ifMade(Scripts::close);
    }
}
