package farwatt.acceptance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import farwatt.acceptance.Program.Run;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every verb as a person calls it. */
class CommandIT {
    private static final Path FERRY = Program.scenario("ferry-landing.farwatt.json");
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    private Run done(Object... arguments) throws Exception {
        Run run = Program.run(arguments);
        assertEquals(0, run.exit(), run.err() + run.out());
        assertTrue(run.isClean(), run.out() + run.err());
        return run;
    }

    @Test
    void checkHoldsByDayAndFailsInTheWinterNight() throws Exception {
        Run day = done("check", FERRY);
        assertTrue(day.out().contains("Holds in every corner; least reserve 22.1 % at gate"), day.out());
        assertTrue(day.out().contains("planning aid"), "cautions always come along");
        Run night = Program.run("check", FERRY, "--scenario", "winter night");
        assertEquals(1, night.exit());
        assertTrue(night.out().contains("Fails when all start in the heat: gate keeps 2.895 %"), night.out());
    }

    @Test
    void checkSpeaksJsonWithTheVerdictEveryCornerAndFindings() throws Exception {
        Run run = Program.run("check", FERRY, "--scenario", "one more camera", "--json");
        assertEquals(1, run.exit());
        JsonNode json = JSON.readTree(run.out());
        assertFalse(json.at("/verdict/holds").asBoolean());
        assertEquals("hotstart", json.at("/verdict/corner").asText());
        assertEquals("gate", json.at("/verdict/row").asText());
        assertTrue(json.at("/corners/cold/least_reserve_share").asDouble() > 0.05);
        assertTrue(json.at("/findings").size() >= 2);
        JsonNode finding = json.at("/findings/0");
        for (String key :
                new String[] {"code", "level", "corner", "row", "name", "value", "limit", "text", "remedies"}) {
            assertTrue(finding.has(key), key + " in " + finding);
        }
    }

    @Test
    void solveGivesEveryAnswerInSiAndNullsWithAReason() throws Exception {
        JsonNode json =
                JSON.readTree(done("solve", FERRY, "--json", "--corner", "hot").out());
        assertEquals("hot", json.at("/corner").asText());
        assertEquals("solved", json.at("/status").asText());
        assertEquals(0.95, json.at("/runs/trunk/length").asDouble() / 100, 1e-12);
        double sent = json.at("/sources/feed/sent").asDouble();
        double balance = json.at("/plan_values/lost").asDouble();
        for (JsonNode device : json.at("/devices")) {
            balance += device.at("/watts").asDouble();
        }
        balance += json.at("/switches/gate/received").asDouble()
                - json.at("/switches/gate/sent").asDouble();
        assertEquals(sent, balance, 1e-9 * sent, "watts sent are watts lost, used and kept by the switch");
        assertTrue(json.at("/runs/trunk/seen_loop").isNull());
        assertTrue(
                json.at("/why/runs~1trunk~1seen_loop").asText().contains("seen_volts_near"),
                json.at("/why").toString());
        JsonNode all =
                JSON.readTree(done("solve", FERRY, "--json", "--corner", "all").out());
        assertEquals(5, all.at("/corners").size());
    }

    @Test
    void askAnswersAndMarksWhatItCannotRead() throws Exception {
        Run run = done("ask", FERRY, "gate.reserve_share", "total(draw of devices under gate)");
        assertTrue(run.out().contains("gate.reserve_share = 28.13 %"), run.out());
        assertTrue(run.out().contains("= 51.5 W"), run.out());
        Run bad = Program.run("ask", FERRY, "gate.avaliable");
        assertEquals(2, bad.exit());
        assertTrue(bad.err().contains("^^^^^^^^^"), bad.err());
        assertTrue(bad.err().contains("Did you mean \"available\"?"), bad.err());
    }

    @Test
    void explainGoesDownToWhatWasTypedAndWhichStandardCameIn() throws Exception {
        String out = done("explain", FERRY, "gate.available", "--depth", "4").out();
        assertTrue(out.startsWith("gate · available = 72 W"), out);
        assertTrue(out.contains("gate · budget = 84 W   <- typed: 84 W"), out);
        assertTrue(out.contains("IEEE 802.3 clauses 33 and 145"), out);
        assertTrue(out.contains("salt air"), "the reason of a replaced constant: " + out);
    }

    @Test
    void compareLaysScenariosSideBySideAndMarksWhatDiffers() throws Exception {
        JsonNode json = JSON.readTree(
                done("compare", FERRY, "winter night", "--json", "--read", "gate.sent", "--read", "trunk.length")
                        .out());
        assertEquals("base", json.at("/scenarios/0").asText());
        assertTrue(json.at("/rows/0/differs").asBoolean());
        assertFalse(json.at("/rows/1/differs").asBoolean());
    }

    @Test
    void theTakeOffCountsWhatToOrderAndWhatAScenarioNeedsMore() throws Exception {
        JsonNode all = JSON.readTree(done("takeoff", FERRY, "--json").out());
        JsonNode cable = all.at("/lines/0");
        assertEquals("cable", cable.at("/part").asText());
        assertEquals(95 * 1.1, cable.at("/order").asDouble(), 1e-9);
        assertEquals(1, cable.at("/boxes").asInt());
        assertTrue(all.at("/cost").asDouble() > 0);
        JsonNode more =
                JSON.readTree(done("takeoff", FERRY, "--scenario", "one more camera", "--against", "base", "--json")
                        .out());
        boolean camera = false;
        for (JsonNode one : more.at("/differences")) {
            camera |= one.at("/part").asText().equals("device")
                    && one.at("/after").asInt() == one.at("/before").asInt() + 1;
        }
        assertTrue(camera, more.toString());
        assertTrue(done("takeoff", FERRY, "--against", "base").out().contains("Both need the same."));
    }

    @Test
    void namesTellUnitFormulaAndSource() throws Exception {
        String out = done("names", "run.loss").out();
        assertTrue(out.contains("runs.loss, W  (solved)"), out);
        assertTrue(out.contains("= amps^2 * loop"), out);
    }

    @Test
    void tidyTwiceIsTidyOnceAndChangesNoFigure() throws Exception {
        Path copy = Files.copy(FERRY, folder.resolve("copy.farwatt.json"));
        String before = done("solve", copy, "--json").out();
        done("tidy", copy);
        byte[] once = Files.readAllBytes(copy);
        done("tidy", copy);
        assertEquals(new String(once, StandardCharsets.UTF_8), Files.readString(copy));
        assertEquals(before, done("solve", copy, "--json").out());
    }

    @Test
    void aListBecomesAPlanAndItsFourCountsAddUp() throws Exception {
        Path plan =
                Files.copy(Program.scenario("orchard-packing-shed.farwatt.json"), folder.resolve("shed.farwatt.json"));
        Path list = Program.scenario("orchard-devices.csv");
        JsonNode json =
                JSON.readTree(done("intake", list, "--json", "--preview").out());
        int sum = json.at("/taken").asInt()
                + json.at("/changed").asInt()
                + json.at("/held_back").asInt()
                + json.at("/left_out").asInt();
        assertEquals(json.at("/rows").asInt(), sum);
        assertEquals(24, json.at("/devices").size());
        int before = JSON.readTree(plan.toFile()).at("/devices").size();
        done("intake", list, "--into", plan, "--policy", "skip");
        assertEquals(before + 24, JSON.readTree(plan.toFile()).at("/devices").size());
        Run check = Program.run("check", plan);
        assertTrue(check.exit() <= 1 && check.isClean(), check.err());
        done("intake", list, "--into", plan, "--policy", "skip");
        assertEquals(before + 24, JSON.readTree(plan.toFile()).at("/devices").size(), "the same list twice");
    }

    @Test
    void aNewerListIsToldAgainstThePlanAndItsReportIsAWorkbook() throws Exception {
        Path plan = folder.resolve("yard.farwatt.json");
        Path first = Files.writeString(
                folder.resolve("first.csv"), "Thing,Juice,m,Fed from\ncam,6,20,pole\nhorn,3,10,pole\n");
        done(
                "intake",
                first,
                "--into",
                plan,
                "--column",
                "Thing=name",
                "--column",
                "Juice=watts",
                "--answer",
                "feeder:pole=new edge switch",
                "--remember",
                "yard");
        assertEquals("pole", JSON.readTree(plan.toFile()).at("/switches/0/id").asText());
        Path next = Files.writeString(
                folder.resolve("next.csv"), "Thing,Juice,m,Fed from\ncam,7,20,pole\nsign,5,12,pole\n");
        Path report = folder.resolve("report.xlsx");
        Object[] look = {"intake", next, "--into", plan, "--mapping", "yard", "--report", report, "--preview"};
        Run shown = done(look);
        assertTrue(shown.out().contains("differs: cam.draw 6 W → 7 W"), shown.out());
        assertTrue(shown.out().contains("not in the list: horn"), shown.out());
        byte[] bytes = Files.readAllBytes(report);
        assertTrue(bytes.length > 3000 && bytes[0] == 'P' && bytes[1] == 'K');
        assertEquals("6 W", JSON.readTree(plan.toFile()).at("/devices/0/draw").asText());
        done("intake", next, "--into", plan, "--mapping", "yard", "--gone", "remove");
        JsonNode after = JSON.readTree(plan.toFile()).at("/devices");
        assertEquals(List.of("cam", "sign"), after.findValuesAsText("id"));
        assertEquals("7 W", after.at("/0/draw").asText());
    }

    @Test
    void theWorkbookIsThereAndOpens() throws Exception {
        Path target = folder.resolve("hand-over.xlsx");
        done("workbook", FERRY, "-o", target);
        byte[] bytes = Files.readAllBytes(target);
        assertTrue(bytes.length > 5000 && bytes[0] == 'P' && bytes[1] == 'K');
        assertEquals(1, folder.toFile().list().length, "nothing is left beside it");
    }

    @Test
    void theWorkbookHasTheSheetsAndStudiesThatWereAskedFor() throws Exception {
        Path target = folder.resolve("some.xlsx");
        String sweep = "sweep --over 'trunk.length = 20 m .. 100 m by 20 m' --read gate.reserve_share";
        done("workbook", FERRY, "-o", target, "--sheet", "test sheet", "--study", sweep, "--study", "room");
        try (ZipFile zip = new ZipFile(target.toFile())) {
            String names = new String(
                    zip.getInputStream(zip.getEntry("xl/workbook.xml")).readAllBytes(), StandardCharsets.UTF_8);
            for (String name : List.of("Summary", "Test sheet", "Sweep of gate.reserve_share", "Room for more")) {
                assertTrue(names.contains("name=\"" + name + "\""), names);
            }
            assertFalse(names.contains("name=\"Devices\""), names);
            assertTrue(zip.getEntry("xl/charts/chart1.xml") != null, "the sweep's chart");
        }
        Path list = folder.resolve("runs.csv");
        done("workbook", FERRY, "-o", list, "--sheet", "runs");
        assertTrue(Files.readString(list).contains("run cam 1"));
        Path points = folder.resolve("sweep.xlsx");
        done("sweep", FERRY, "--over", "trunk.length = 20 m, 40 m", "--read", "plan.lost", "-o", points);
        assertTrue(Files.size(points) > 5000);
        Run wrong = Program.run("workbook", FERRY, "-o", folder.resolve("no.xlsx"), "--study", "swoop");
        assertEquals(2, wrong.exit());
        assertTrue(wrong.err().contains("Begin with one of grow, limit") && wrong.isClean(), wrong.err());
        Run sheet = Program.run("workbook", FERRY, "-o", folder.resolve("no.xlsx"), "--without", "Device");
        assertEquals(2, sheet.exit());
        assertTrue(sheet.err().contains("Device is no sheet") && sheet.isClean(), sheet.err());
        assertFalse(Files.exists(folder.resolve("no.xlsx")));
    }

    @Test
    void theDiagramIsAPictureWithoutADisplay() throws Exception {
        Path png = folder.resolve("landing.png");
        done("diagram", FERRY, "-o", png);
        byte[] bytes = Files.readAllBytes(png);
        assertTrue(bytes.length > 20_000 && bytes[1] == 'P' && bytes[2] == 'N' && bytes[3] == 'G');
        Path svg = folder.resolve("night.svg");
        Run said = done("diagram", FERRY, "-o", svg, "--scenario", "winter night", "--corner", "cold");
        assertTrue(said.err().contains("night.svg"), said.err());
        String text = Files.readString(svg);
        assertTrue(text.contains("winter night") && text.contains("when all start in the cold"), text);
        for (String id : List.of("feed", "gate", "trunk", "cam 4", "run tide gauge", "timetable")) {
            assertTrue(text.contains(id), id);
        }
        Run gif = Program.run("diagram", FERRY, "-o", folder.resolve("landing.gif"));
        assertEquals(2, gif.exit());
        assertTrue(gif.err().contains(".png or .svg") && gif.isClean(), gif.err());
        Run pink = Program.run("diagram", FERRY, "-o", png, "--palette", "pink");
        assertEquals(2, pink.exit());
        assertTrue(pink.err().contains("light, dark, contrast"), pink.err());
        assertTrue(done("diagram", "--help").out().contains("--corner"), "help");
    }

    @Test
    void withoutAVerbTheDemoPlanIsJudgedAndItsWorkbookWrittenBesideTheJar() throws Exception {
        Path target = folder.resolve("target");
        Files.createDirectories(target);
        Path jar = Files.copy(Program.JAR, target.resolve("farwatt.jar"));
        Files.createSymbolicLink(
                target.resolve("lib"), Program.JAR.resolveSibling("lib").toAbsolutePath());
        Run run = Program.run(Map.of(), jar);
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("Ferry landing, east gate"), run.out());
        assertTrue(run.out().contains("Holds in every corner"), run.out());
        assertTrue(Files.size(target.resolve("ferry-landing.xlsx")) > 5000);
    }

    @Test
    void aPlainTerminalStillGetsWholeUtf8FromAPipe() throws Exception {
        Run run = Program.run(Map.of("LC_ALL", "POSIX"), Program.JAR, "explain", FERRY, "gate.available");
        assertTrue(run.out().startsWith("gate · available = 72 W"), run.out());
    }
}
