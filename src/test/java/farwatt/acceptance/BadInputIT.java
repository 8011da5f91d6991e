package farwatt.acceptance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.acceptance.Program.Run;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is handed in: one clear sentence, the right exit code, nothing overwritten. */
class BadInputIT {
    @TempDir
    Path folder;

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("plan.farwatt.json"), text);
    }

    private Run refused(Object... arguments) throws Exception {
        Run run = Program.run(arguments);
        assertEquals(2, run.exit(), run.out() + run.err());
        assertTrue(run.isClean(), run.err());
        assertEquals(1, run.err().strip().lines().count(), "one sentence: " + run.err());
        assertEquals("", run.out());
        return run;
    }

    private static void says(Run run, String... parts) {
        for (String part : parts) {
            assertTrue((run.err() + run.out()).contains(part), part + " in " + run.err() + run.out());
        }
    }

    private Run finds(String plan, String... parts) throws Exception {
        Path file = file(plan);
        byte[] before = Files.readAllBytes(file);
        Run run = Program.run("check", file);
        assertEquals(1, run.exit(), run.out() + run.err());
        assertTrue(run.isClean(), run.out() + run.err());
        says(run, parts);
        assertArrayEquals(before, Files.readAllBytes(file));
        return run;
    }

    @Test
    void filesThatAreNoPlanAreRefused() throws Exception {
        says(refused("check", folder.resolve("nowhere.farwatt.json")), "nowhere.farwatt.json", "not there");
        says(refused("check", folder), "folder");
        says(refused("check", file("not json at all")), "plan.farwatt.json");
        says(refused("check", file("{\"recipe\": 1}")), "plan.farwatt.json");
        says(refused("check", file("{\"farwatt\": \"one\"}")), "version");
        says(refused("check", file("")), "plan.farwatt.json");
        says(refused("check", file("[".repeat(100) + "]".repeat(100))), "plan.farwatt.json");
        says(refused("check", file("{\"farwatt\":1,\"x\":" + "[".repeat(80) + "]".repeat(80) + "}")), "64");
    }

    @Test
    void aFileOver64MegabytesIsNotEvenRead() throws Exception {
        Path big = folder.resolve("big.farwatt.json");
        byte[] blank = " ".repeat(1 << 20).getBytes(StandardCharsets.UTF_8);
        try (OutputStream out = Files.newOutputStream(big)) {
            for (int i = 0; i < 65; i++) {
                out.write(blank);
            }
        }
        says(refused("check", big), "64");
    }

    @Test
    void aNewerVersionIsReadButNeverWritten() throws Exception {
        Path file = file("{\"farwatt\": 2, \"plan\": {\"name\": \"later\"}, \"sources\": [{\"id\": \"s\"}]}");
        byte[] before = Files.readAllBytes(file);
        Run check = Program.run("check", file);
        assertTrue(check.isClean() && check.exit() <= 1, check.err());
        says(check, "version 2");
        assertEquals(2, Program.run("tidy", file).exit());
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void mistakesInCellsAreFindingsWithRowAndName() throws Exception {
        String plan = "{\"farwatt\":1,\"sources\":[{\"id\":\"s\",\"type\":4%s}],\"switches\":[{\"id\":\"w\"%s}],"
                + "\"runs\":[{\"id\":\"r\",\"from\":\"s\",\"to\":\"w\",\"length\":\"%s\"},"
                + "{\"id\":\"q\",\"from\":\"w\",\"to\":\"d\",\"length\":\"5 m\"}],"
                + "\"devices\":[{\"id\":\"d\",\"draw\":\"5 W\"}]}";
        finds(String.format(plan, "", "", "-5 m"), "r · length", "-5 m");
        finds(String.format(plan, "", ",\"efficiency\":\"0 %\"", "5 m"), "w · efficiency", "0 %");
        finds(String.format(plan, ",\"volts\":\"120 V\"", "", "5 m"), "s · volts", "120 V");
        finds(String.format(plan, "", "", "5 m +"), "r · length");
        finds(String.format(plan, "", "", "5 W"), "r · length");
    }

    @Test
    void structuralSlipsAreFindingsAndTheRestIsCalculated() throws Exception {
        String ring = "{\"farwatt\":1,\"sources\":[{\"id\":\"s\",\"type\":4}],"
                + "\"switches\":[{\"id\":\"A\"},{\"id\":\"B\"},{\"id\":\"C\"}],\"runs\":["
                + "{\"id\":\"ab\",\"from\":\"A\",\"to\":\"B\",\"length\":\"5 m\"},"
                + "{\"id\":\"bc\",\"from\":\"B\",\"to\":\"C\",\"length\":\"5 m\"},"
                + "{\"id\":\"ca\",\"from\":\"C\",\"to\":\"A\",\"length\":\"5 m\"},"
                + "{\"id\":\"sd\",\"from\":\"s\",\"to\":\"d\",\"length\":\"5 m\"}],"
                + "\"devices\":[{\"id\":\"d\",\"draw\":\"5 W\"}]}";
        finds(ring, "A → B → C → A");
        Run solved = Program.run("ask", folder.resolve("plan.farwatt.json"), "d.watts", "A.sent");
        says(solved, "d.watts = 5 W", "A.sent = no value");
    }

    @Test
    void aChainOfTenThousandSwitchesIsAnsweredOrSaid() throws Exception {
        StringBuilder switches = new StringBuilder();
        StringBuilder runs = new StringBuilder();
        for (int i = 0; i < 10_000; i++) {
            switches.append(i == 0 ? "" : ",").append("{\"id\":\"w").append(i).append("\"}");
            String from = i == 0 ? "s" : "w" + (i - 1);
            runs.append(i == 0 ? "" : ",")
                    .append("{\"id\":\"r" + i + "\",\"from\":\"" + from + "\",\"to\":\"w" + i
                            + "\",\"length\":\"1 m\"}");
        }
        Path file = file("{\"farwatt\":1,\"sources\":[{\"id\":\"s\",\"type\":4}],\"switches\":[" + switches
                + "],\"runs\":[" + runs + "]}");
        Run run = Program.run("check", file);
        assertEquals(1, run.exit(), run.err());
        assertTrue(run.isClean());
        says(run, "Fails in typical use");
    }

    @Test
    void targetsThatCannotBeWrittenAreSaidAndLeftAlone() throws Exception {
        Path ferry = Program.scenario("ferry-landing.farwatt.json");
        says(refused("workbook", ferry, "-o", folder.resolve("no/such/folder/out.xlsx")), "out.xlsx");
        says(refused("workbook", ferry, "-o", folder), folder.getFileName().toString());
        if (Files.exists(Path.of("/dev/full"))) {
            refused("workbook", ferry, "-o", "/dev/full");
        }
    }

    @Test
    void callsThatMakeNoSenseAreSaid() throws Exception {
        Path ferry = Program.scenario("ferry-landing.farwatt.json");
        says(refused("check", ferry, "--corner", "warm"), "warm", "hotstart");
        says(refused("check", ferry, "--scenario", "summer"), "summer", "winter night");
        assertEquals(2, Program.run("chek", ferry).exit());
        assertEquals(2, Program.run("check").exit());
        says(refused("intake", folder.resolve("none.csv")), "none.csv");
    }
}
