package farwatt.acceptance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Studies on the command line draw what they found. */
class StudyPictureIT {
    private static final Path FERRY = Program.scenario("ferry-landing.farwatt.json");

    @TempDir
    Path folder;

    private String drawn(String verb, String... options) throws Exception {
        Path file = folder.resolve(verb + ".svg");
        List<Object> call = new ArrayList<>(List.of(verb, FERRY));
        call.addAll(List.of(options));
        call.addAll(List.of("--picture", file));
        Program.Run run = Program.run(call.toArray());
        assertEquals(0, run.exit(), run::err);
        assertTrue(run.isClean() && run.err().contains(verb + ".svg"), run::err);
        return Files.readString(file);
    }

    @Test
    void everyStudyThatHasFiguresDrawsThem() throws Exception {
        String sweep = drawn(
                "sweep",
                "--over",
                "quay.ambient = -20 degC .. 60 degC by 20 K",
                "--over",
                "trunk.gauge = 22 AWG, 24 AWG, 26 AWG",
                "--read",
                "gate.reserve_share");
        assertTrue(sweep.contains("quay.ambient") && sweep.contains("20 target"));
        String grow = drawn("grow", "--copy", "cam 1", "--until", "gate.reserve_share < reserve_target");
        assertTrue(grow.contains("room for 1") && grow.contains("limit 20 %"));
        String limit = drawn("limit", "--vary", "trunk.length = 1 m .. 300 m", "--holds", "gate.reserve_share >= 20 %");
        assertTrue(limit.contains("holds up to 196."));
        String spread = drawn("spread", "--vary", "trunk.length = 95 m ~ 5 %", "--read", "gate.reserve_share");
        assertTrue(spread.contains("5 % lie below"));
        String sensitivity = drawn("sensitivity", "--read", "gate.reserve_share");
        assertTrue(sensitivity.contains("a step up"));
    }

    @Test
    void anEndingThatIsNoPictureIsRefusedBeforeAnythingIsWorkedOut() throws Exception {
        Program.Run run = Program.run(
                "sensitivity", FERRY, "--read", "gate.reserve_share", "--picture", folder.resolve("result.txt"));
        assertEquals(2, run.exit());
        assertTrue(run.out().isEmpty() && run.err().contains(".png or .svg"), run::err);
    }
}
