package farwatt.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import farwatt.catalogue.Wording;
import farwatt.plan.Cell;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Step;
import farwatt.plan.Table;
import farwatt.report.Notice;
import farwatt.report.Refusal;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

class PlanReaderTest {
    @TempDir
    Path folder;

    /** What is no plan file, and the sentence. */
    private static final Map<String, String> REFUSED = Map.ofEntries(
            Map.entry("", "x is empty; open an earlier copy of the plan"),
            Map.entry(" \n\t ", "x is empty; open an earlier copy of the plan"),
            Map.entry("\ufeff", "x is empty; open an earlier copy of the plan"),
            Map.entry(
                    "{\"farwatt\": 1,\n  oops}",
                    "x, line 2, column 3: what stands here breaks the form of a plan file (JSON); mend it in a text"
                            + " editor, or open an earlier copy"),
            Map.entry(
                    "{\"farwatt\": 1} {",
                    "x, line 1, column 16: what stands here breaks the form of a plan file (JSON); mend it in a text"
                            + " editor, or open an earlier copy"),
            Map.entry(
                    "{\"farwatt\": 01}",
                    "x, line 1, column 14: what stands here breaks the form of a plan file (JSON); mend it in a text"
                            + " editor, or open an earlier copy"),
            Map.entry(
                    "{\"farwatt\": 1, \"runs\": [{\"id\": \"tru",
                    "x ends in the middle; open an earlier copy of the plan"),
            Map.entry("{\"farwatt\": 1, \"runs\": [", "x ends in the middle; open an earlier copy of the plan"),
            Map.entry("[]", "x is JSON, but no plan; a plan starts with \"farwatt\": 1"),
            Map.entry("5", "x is JSON, but no plan; a plan starts with \"farwatt\": 1"),
            Map.entry("null", "x is JSON, but no plan; a plan starts with \"farwatt\": 1"),
            Map.entry("{\"name\": \"list\"}", "x is JSON, but no plan; a plan starts with \"farwatt\": 1"),
            Map.entry("{\"runs\": []}", "x does not say which version it is; write \"farwatt\": 1 as its first line"),
            Map.entry(
                    "{\"farwatt\": \"1\"}",
                    "x gives its version as \"1\"; a version is a whole number, such as \"farwatt\": 1"),
            Map.entry(
                    "{\"farwatt\": 1.0}",
                    "x gives its version as 1.0; a version is a whole number, such as \"farwatt\": 1"),
            Map.entry(
                    "{\"farwatt\": 0}",
                    "x gives its version as 0; a version is a whole number, such as \"farwatt\": 1"),
            Map.entry(
                    "{\"farwatt\": -1}",
                    "x gives its version as -1; a version is a whole number, such as \"farwatt\": 1"),
            Map.entry(
                    "{\"farwatt\": null}",
                    "x gives its version as null; a version is a whole number, such as \"farwatt\": 1"),
            Map.entry(
                    "{\"farwatt\": [1]}",
                    "x gives its version as [1]; a version is a whole number, such as \"farwatt\": 1"));

    @TestFactory
    Stream<DynamicTest> whatIsNoPlanFileIsRefusedInOneSentence() {
        return REFUSED.entrySet().stream()
                .map(e -> dynamicTest("«" + e.getKey() + "»", () -> assertEquals(e.getValue(), refusal(e.getKey()))));
    }

    /** A part of a file and what is said about it, worst things first in this list of ours only. */
    private static final List<String[]> TOLD = List.of(
            said(
                    "\"runs\": [{\"length\": \"5 m\"}]",
                    "warn runs/unnamed 1/: This row has no id and is called unnamed 1; give it one"),
            said(
                    "\"runs\": [{\"id\": \"\", \"length\": \"5 m\"}]",
                    "warn runs/unnamed 1/: This row has no id and is called unnamed 1; give it one"),
            said(
                    "\"values\": [{\"is\": \"5 m\"}]",
                    "warn values/unnamed_1/: This row has no name and is called unnamed_1; give it one"),
            said("\"runs\": [{\"id\": 5}]", "warn runs/5/: The id is a number and is taken as the text 5"),
            said(
                    "\"runs\": [{\"id\": null}]",
                    "fail runs/unnamed 1/: id holds null, which cannot be read there; it is kept as id (2)",
                    "warn runs/unnamed 1/: This row has no id and is called unnamed 1; give it one",
                    "note runs/unnamed 1/id (2): id (2) is no column of runs; it is kept, but not used"),
            said(
                    "\"runs\": [{\"id\": [\"a\"], \"id\": \"b\"}]",
                    "fail runs/b/: id holds [\"a\"], which cannot be read there; it is kept as id (2)",
                    "note runs/b/id (2): id (2) is no column of runs; it is kept, but not used"),
            said(
                    "\"runs\": [{\"id\": \"a\", \"length\": \"5 m\", \"length\": \"6 m\"}]",
                    "fail runs/a/length: length stands twice in this row; the second is kept as length (2)",
                    "note runs/a/length (2): length (2) is no column of runs; it is kept, but not used"),
            said(
                    "\"runs\": [{\"id\": \"a\", \"id\": \"b\"}]",
                    "fail runs/a/id: id stands twice in this row; the second is kept as id (2)",
                    "note runs/a/id (2): id (2) is no column of runs; it is kept, but not used"),
            said(
                    "\"runs\": [7, {\"id\": \"a\"}, [1, 2]]",
                    "fail runs//: 7 is no row of runs; it is kept, but counts for nothing",
                    "fail runs//: [1, 2] is no row of runs; it is kept, but counts for nothing"),
            said("\"runs\": {\"a\": 1}", "fail runs//: runs is no list of rows; it is kept, but counts for nothing"),
            said(
                    "\"scenarios\": 5",
                    "fail scenarios//: scenarios is no list of rows; it is kept, but counts for nothing"),
            said(
                    "\"plan\": 5",
                    "fail plan//: What stands here is no set of names and values; it is kept, but counts for nothing"),
            said(
                    "\"runs\": [{\"id\": \"a\"}], \"runs\": [{\"id\": \"b\"}]",
                    "warn runs//: runs stands twice in the file; both are read, one after the other"),
            said(
                    "\"runs\": [{\"id\": \"a\", \"lenght\": \"5 m\"}]",
                    "note runs/a/lenght: lenght is no column of runs; it is kept, but not used"),
            said(
                    "\"runs\": [{\"id\": \"a\", \"x\": 1}, {\"id\": \"b\"}, {\"id\": \"c\", \"x\": 2}]",
                    "note runs/a/x: x is no column of runs; it is kept in 2 rows, but not used"),
            said(
                    "\"runs\": [{\"id\": \"a\", \"loss\": \"5 W\"}]",
                    "note runs/a/loss: loss is worked out; what the file says about it is kept, but not used"),
            said("\"boats\": []", "note //boats: boats is not known; it is kept, but not used"),
            said("\"scenarios\": [5]", "fail scenarios//: 5 is no scenario; it is kept, but counts for nothing"),
            said(
                    "\"scenarios\": [{}]",
                    "warn scenarios/unnamed/: This row has no id and is called unnamed; give it one"),
            said(
                    "\"scenarios\": [{\"id\": \"a\"}, {\"id\": \"A\"}]",
                    "fail scenarios/A/: A scenario called A is there already; the first one is used, rename one of them"),
            said(
                    "\"scenarios\": [{\"id\": \"a\", \"by\": \"me\"}]",
                    "note scenarios/a/by: by is no column of scenarios; it is kept, but not used"),
            said(
                    "\"scenarios\": [{\"id\": \"a\", \"by\": 1, \"by\": 2}]",
                    "note scenarios/a/by: by is no column of scenarios; it is kept, but not used",
                    "fail scenarios/a/by: by stands twice in this row; the second is kept as by (2)"),
            said(
                    "\"scenarios\": [{\"id\": \"a\", \"changes\": {}}]",
                    "fail scenarios/a/: changes holds {}, which cannot be read there; it is kept as changes (2)"),
            said(
                    "\"scenarios\": [{\"id\": \"a\", \"changes\": [{\"drop\": \"b\"}, {\"turn\": \"c\"}]}]",
                    "fail scenarios/a/: Change 2 is none that is known (set … to, add … row, drop); it is kept, but changes nothing"),
            said(
                    "\"scenarios\": [{\"id\": \"a\", \"changes\": [{\"add\": \"runs\", \"row\": {\"id\": \"b\", \"lenght\": \"1 m\"}}]}]",
                    "note scenarios/a/lenght: lenght is no column of runs; it is kept, but not used"),
            said("\"studies\": [1], \"mappings\": {}"),
            said("\"columns\": [{\"name\": \"tag\", \"table\": \"runs\"}], \"runs\": [{\"id\": \"a\", \"tag\": 1}]"));

    private static String[] said(String... partAndSentences) {
        return partAndSentences;
    }

    @TestFactory
    Stream<DynamicTest> whatIsNotUnderstoodIsToldWithItsPlace() {
        return TOLD.stream()
                .map(row -> dynamicTest(
                        row[0],
                        () -> assertEquals(
                                List.of(row).subList(1, row.length),
                                read("{\"farwatt\": 1, " + row[0] + "}").notices().stream()
                                        .map(PlanReaderTest::line)
                                        .toList())));
    }

    @TestFactory
    Stream<DynamicTest> whatCountsForNothingIsToldAgainAfterSaving() {
        return Stream.of(
                        "\"runs\": [7, {\"id\": \"a\"}, [1, 2]]",
                        "\"runs\": {\"a\": 1}",
                        "\"plan\": 5",
                        "\"scenarios\": [5, {\"id\": \"a\", \"changes\": [{\"turn\": \"c\"}]}]",
                        "\"boats\": [1, 2], \"runs\": [{\"id\": \"a\", \"lenght\": \"5 m\", \"loss\": \"1 W\"}]")
                .map(part -> dynamicTest(part, () -> {
                    Opened first = read("{\"farwatt\": 1, " + part + "}");
                    Opened again = read(PlanWriter.text(first.plan(), Wording.PLAIN));
                    assertEquals(new HashSet<>(first.notices()), new HashSet<>(again.notices()));
                    assertFalse(again.notices().isEmpty());
                }));
    }

    private static String line(Notice notice) {
        return notice.level().word() + " " + notice.place().table() + "/"
                + notice.place().row() + "/" + notice.place().name() + ": " + notice.text();
    }

    @Test
    void theExampleIsReadWhole() throws Exception {
        Opened opened = Example.opened();
        Plan plan = opened.plan();
        assertEquals(List.of(), opened.notices());
        assertEquals(Access.EDIT, opened.access());
        assertEquals(64, opened.fingerprint().hex().length());
        assertEquals("Ferry landing, east gate", plan.name());
        assertEquals(2, plan.rows(Table.RUNS).size());
        Row quay = plan.rows(Table.ZONES).row("QUAY").orElseThrow();
        assertEquals(Cell.YES, quay.cell("outdoor").orElseThrow());
        assertEquals(Cell.text("-15 degC"), quay.cell("coldest").orElseThrow());
        assertEquals(
                Cell.number("3"), plan.rows(Table.DEVICES).at(0).cell("class").orElseThrow());
        assertEquals(3, plan.scenarios().size());
        assertEquals("winter night", plan.scenarios().get(1).on());
        assertEquals(
                new Step.Set("trunk.gauge", Cell.text("22 AWG")),
                plan.scenarios().get(1).steps().get(0));
        assertEquals(new Step.Drop("cam 1"), plan.scenarios().get(2).steps().get(2));
        assertEquals(Map.of("studies", "[]", "mappings", "[]"), plan.rest());
    }

    @Test
    void identifiersAndNumbersAreKeptToTheLastCharacter() throws Refusal {
        Opened opened =
                read("{\"farwatt\": 1, \"devices\": [{\"id\": \" 007\\u00a0\\ud834\\udd1e\\\\ \", \"draw\": 1.10e+05,"
                        + " \"note\": 123456789012345678901234567890.10}]}");
        Row row = opened.plan().rows(Table.DEVICES).at(0);
        assertEquals(" 007\u00a0\ud834\udd1e\\ ", row.id());
        assertEquals(Cell.number("1.10e+05"), row.cell("draw").orElseThrow());
        assertEquals(
                Cell.number("123456789012345678901234567890.10"),
                row.cell("note").orElseThrow());
    }

    @Test
    void aNewerFileMayOnlyBeLookedAt() throws Refusal {
        Opened opened = read("{\"farwatt\": 99999999999999999999, \"runs\": [{\"id\": \"a\"}]}");
        assertEquals(Access.READ_ONLY, opened.access());
        assertEquals(1, opened.plan().rows(Table.RUNS).size());
        assertEquals(
                "This plan was written by version 2147483647 of the format and this program knows version 1: it can be"
                        + " looked at but not saved, and parts may be missing",
                opened.notices().get(0).text());
        assertThrows(IllegalArgumentException.class, () -> PlanWriter.text(opened.plan(), Wording.PLAIN));
    }

    @Test
    void aMarkAtTheStartIsNoHarm() throws Refusal {
        assertEquals(1, read("\ufeff{\"farwatt\": 1}").plan().version());
    }

    @Test
    void sixtyFourLevelsAreReadAndOneMoreIsRefused() throws Refusal {
        String deepest = "[".repeat(62) + "]".repeat(62);
        read("{\"farwatt\": 1, \"studies\": [" + deepest + "]}");
        assertEquals(
                "x nests deeper than 64 levels, which no plan does; check that it is the right file",
                refusal("{\"farwatt\": 1, \"studies\": [[" + deepest + "]]}"));
    }

    @Test
    void textThatIsNotUtf8IsRefusedWithItsLine() throws Refusal {
        byte[] bytes = "{\"farwatt\": 1,\n \"more\": \"é\"}".getBytes(StandardCharsets.ISO_8859_1);
        Refusal refusal = assertThrows(Refusal.class, () -> PlanReader.read(bytes, "x"));
        assertEquals(
                "x, line 2: this is not text in UTF-8; check that it is a plan file, or save it in UTF-8",
                refusal.getMessage());
        assertEquals(
                "\ufffd",
                read("{\"farwatt\": 1, \"plan\": {\"name\": \"\ufffd\"}}")
                        .plan()
                        .name());
    }

    @Test
    void filesThatCannotBeReadAreRefused() throws IOException {
        Path missing = folder.resolve("no such.json");
        assertEquals(missing + " is not there; check the name and the folder", refusal(missing));
        assertEquals(folder + " is a folder; name a plan file in it", refusal(folder));
        Path inside = Files.writeString(folder.resolve("a"), "x").resolve("b");
        assertEquals(
                inside + " cannot be read; check that you have the right to, and that its disk is in reach",
                refusal(inside));
    }

    @Test
    void moreThan64MegabytesAreRefusedUnread() throws IOException {
        Path large = folder.resolve("large.json");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(PlanReader.MOST_BYTES + 1L);
        }
        assertEquals(
                large + " is larger than 64 MB, which no plan is; check that it is the right file", refusal(large));
    }

    @Test
    void aFileThatNeverEndsIsRefusedToo() {
        Path endless = Path.of("/dev/zero");
        if (Files.isReadable(endless)) {
            assertTrue(refusal(endless).contains("larger than 64 MB"));
        }
    }

    private static Opened read(String text) throws Refusal {
        return PlanReader.read(text.getBytes(StandardCharsets.UTF_8), "x");
    }

    private static String refusal(String text) {
        return assertThrows(Refusal.class, () -> read(text)).getMessage();
    }

    private static String refusal(Path path) {
        return assertThrows(Refusal.class, () -> PlanReader.read(path)).getMessage();
    }
}
