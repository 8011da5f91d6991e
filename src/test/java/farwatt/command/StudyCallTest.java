package farwatt.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.report.Cancel;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import farwatt.workbook.StudyTable;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A study in one text, as it is put into a hand-over. */
class StudyCallTest {
    private static final List<String> FERRY = List.of("scenarios/ferry-landing.farwatt.json");

    private static List<StudyTable> sheets(String call, List<String> usual) throws Exception {
        return StudyCall.of(call, usual).sheets(Progress.SILENT, new Cancel());
    }

    @Test
    void wordsAreApartByBlanksAndWholeInQuotes() {
        assertEquals(
                List.of("sweep", "--over", "'cam 1'.draw = 1 W, 2 W", "--read", "", "a\"b"),
                StudyCall.words("sweep  --over \"'cam 1'.draw = 1 W, 2 W\"\t--read '' a'\"'b "));
        assertEquals(List.of(), StudyCall.words("  "));
    }

    @Test
    void everyStudyGivesSheets() throws Exception {
        for (String call : List.of(
                "sweep --over 'trunk.gauge = 22 AWG, 24 AWG' --read gate.reserve_share",
                "grow --copy 'cam 1' --until 'gate.reserve_share < 1 %' --most 3",
                "limit --vary 'trunk.length = 1 m .. 300 m' --holds 'gate.reserve_share >= 20 %'",
                "spread --vary 'trunk.length = 95 m +- 5 %' --runs 200 --read gate.reserve_share",
                "sensitivity --read gate.reserve_share",
                "room")) {
            List<StudyTable> sheets = sheets(call, FERRY);
            assertEquals(1, sheets.size(), call);
            assertFalse(sheets.get(0).lines().isEmpty(), call);
        }
    }

    @Test
    void aStudyLooksWhereTheHandoverLooksUnlessItSaysOtherwise() throws Exception {
        List<String> night = List.of(FERRY.get(0), "--scenario", "winter night", "--corner", "cold");
        String call = "sweep --over 'trunk.gauge = 22 AWG' --read gate.reserve_share";
        assertTrue(sheets(call, night).get(0).note().contains("winter night · when all start in the cold"));
        String own = call + " --scenario 'one more camera' --corner hot";
        assertTrue(sheets(own, night).get(0).note().contains("one more camera"));
        assertTrue(sheets(own, night).get(0).note().contains("hottest day"));
    }

    @Test
    void whatCannotBeUnderstoodIsSaidBeforeAnythingIsWorkedOut() {
        assertEquals("command.no_study", refused("check"));
        assertEquals("command.no_study", refused(""));
        assertEquals("command.bad_study", refused("sweep --over 'trunk.gauge = 22 AWG'"));
        assertEquals("command.bad_study", refused("room --frobnicate"));
    }

    private static String refused(String call) {
        return assertThrows(Refusal.class, () -> StudyCall.of(call, FERRY))
                .notice()
                .code();
    }
}
