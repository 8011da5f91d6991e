package farwatt.window;

import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.file.PlanReader;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Refusal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures of every screen, in every theme, small and large, to be looked at. */
@EnabledIfSystemProperty(named = "farwatt.pictures", matches = "true")
class SnapshotsTest {
    private static final List<String> THEMES = List.of("Light", "Dark", "High contrast");

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(ints = {3, 24, 500})
    void everyScreen(int devices) throws Refusal {
        Plan ferry =
                PlanReader.read(Path.of("scenarios/ferry-landing.farwatt.json")).plan();
        try (WindowRun run = new WindowRun(folder, sized(ferry, devices))) {
            for (String theme : THEMES) {
                press(run, "Look", theme);
                String name =
                        devices + "-" + theme.toLowerCase(java.util.Locale.ROOT).replace(' ', '-') + "-";
                show(run, Table.RUNS, "trunk", "gauge");
                run.picture(name + "runs");
                show(run, Table.DEVICES, "cam 1", "volts");
                run.picture(name + "devices");
                for (String place : run.frame.places()) {
                    WindowRun.on(() -> {
                        run.frame.put(place);
                        return true;
                    });
                    run.settle();
                    run.picture(name + place.toLowerCase(java.util.Locale.ROOT).replace(' ', '-'));
                }
                WindowRun.on(() -> {
                    run.frame.put("");
                    return true;
                });
            }
            press(run, "Look", "Light");
            press(run, "Look", "Size 200 %");
            show(run, Table.RUNS, "trunk", "gauge");
            run.picture(devices + "-twice-as-large");
        }
        assertTrue(Files.exists(Path.of("target/pictures/" + devices + "-twice-as-large.png")));
    }

    private static void press(WindowRun run, String menu, String item) {
        run.robot.clickOn(menu);
        run.robot.clickOn(item);
        run.settle();
    }

    private static void show(WindowRun run, Table table, String id, String name) {
        WindowRun.on(() -> {
            run.frame.showTable(table, id, name);
            return true;
        });
        run.settle();
    }

    /** The ferry landing with as many cameras: fewer of what it has, or switches more. */
    private static Plan sized(Plan plan, int devices) {
        List<Row> loads = new ArrayList<>();
        List<Row> runs =
                new ArrayList<>(List.of(plan.rows(Table.RUNS).row("trunk").orElseThrow()));
        List<Row> switches = new ArrayList<>(List.of(plan.rows(Table.SWITCHES).at(0)));
        List<Row> sources = new ArrayList<>(List.of(plan.rows(Table.SOURCES).at(0)));
        int perSwitch = 12;
        for (int i = 1; i <= devices; i++) {
            int tree = 1 + (i - 1) / perSwitch;
            String edge = tree == 1 ? "gate" : "gate " + tree;
            if (tree > 1 && i % perSwitch == 1) {
                sources.add(sources.get(0).renamed("feed " + tree));
                switches.add(switches.get(0).renamed(edge));
                runs.add(runs.get(0)
                        .renamed("trunk " + tree)
                        .with("from", "feed " + tree)
                        .with("to", edge));
            }
            loads.add(Row.of("cam " + i)
                    .with("kind", "fixed camera")
                    .with("draw", "5 W")
                    .with("zone", "quay"));
            runs.add(Row.of("run cam " + i)
                    .with("from", edge)
                    .with("to", "cam " + i)
                    .with("length", 10 + i * 7 % 60 + " m"));
        }
        return plan.with(Table.DEVICES, Rows.of(loads))
                .with(Table.RUNS, Rows.of(runs))
                .with(Table.SWITCHES, Rows.of(switches))
                .with(Table.SOURCES, Rows.of(sources))
                .withScenarios(List.of());
    }
}
