package farwatt.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Cell;
import farwatt.plan.Change;
import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.RandomPlans;
import farwatt.plan.Row;
import farwatt.plan.Table;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalFileTest {
    private static final Fingerprint ON = Fingerprint.of(new byte[] {1});
    private static final Fingerprint NEXT = Fingerprint.of(new byte[] {2});
    private static final Change FIRST =
            new Change.SetCell(Table.RUNS, "trunk", "length", Optional.of(Cell.text("60 m")));
    private static final Change SECOND =
            new Change.AddRow(Table.DEVICES, 0, Row.of("cam 1").with("class", Cell.number("3")));

    @TempDir
    Path folder;

    private Path file() {
        return JournalFile.beside(folder.resolve("quay.json"));
    }

    @Test
    void thereIsNoFileUntilSomethingIsUnsaved() throws IOException {
        assertEquals(".quay.json.journal", String.valueOf(file().getFileName()));
        try (JournalFile journal = JournalFile.start(file(), ON)) {
            journal.saving(NEXT);
            journal.flush();
            assertFalse(Files.exists(file()));
            journal.add(FIRST);
            assertTrue(Files.exists(file()));
            journal.saved(NEXT);
            assertFalse(Files.exists(file()));
            journal.add(SECOND);
        }
        assertEquals(
                Optional.of(new Recovered(List.of(SECOND), Recovered.Basis.SAME_FILE, 0)),
                JournalFile.recover(file(), NEXT));
    }

    @Test
    void everyChangeComesBackAsItWas() throws IOException {
        for (long seed = 1; seed <= 100; seed++) {
            RandomPlans random = new RandomPlans(seed);
            Plan plan = random.plan();
            List<Change> made = new ArrayList<>();
            try (JournalFile journal = JournalFile.start(file(), ON)) {
                for (int i = 0; i < 10; i++) {
                    Change change = random.change(plan);
                    plan = Edit.apply(plan, change).plan();
                    made.add(change);
                    journal.add(change);
                }
                journal.flush();
            }
            Recovered recovered = JournalFile.recover(file(), ON).orElseThrow();
            assertEquals(made, recovered.changes(), "seed " + seed);
            assertEquals(
                    made, recovered.fitting(new RandomPlans(seed).plan(), "all").changes(), "seed " + seed);
        }
    }

    @Test
    void aTornEndCostsOnlyTheLastChange() throws IOException {
        try (JournalFile journal = JournalFile.start(file(), ON)) {
            journal.add(FIRST);
            journal.add(SECOND);
        }
        byte[] whole = Files.readAllBytes(file());
        String text = new String(whole, StandardCharsets.UTF_8);
        int head = text.indexOf('\n') + 1;
        int second = text.indexOf('\n', head) + 1;
        for (int length = 0; length <= whole.length; length++) {
            Files.write(file(), Arrays.copyOf(whole, length));
            List<Change> left =
                    JournalFile.recover(file(), ON).map(Recovered::changes).orElse(List.of());
            List<Change> whole2 = length < whole.length ? List.of(FIRST) : List.of(FIRST, SECOND);
            assertEquals(length < second ? List.of() : whole2, left, "cut at " + length);
        }
    }

    @Test
    void whatIsRubbishInTheMiddleEndsWhatCanBeTrusted() throws IOException {
        try (JournalFile journal = JournalFile.start(file(), ON)) {
            journal.add(FIRST);
            journal.add(SECOND);
        }
        for (String rubbish : List.of(
                "\0\0\0",
                "{}",
                "{\"do\": {\"set\": \"boats\"}}",
                "{\"do\": {\"add\": \"runs\"}}",
                "5",
                "[]",
                "{\"do\": {\"set\": \"runs\", \"id\": 5, \"name\": \"x\", \"cell\": null}}",
                "{\"do\": {\"drop\": \"runs\", \"id\": \"a\", \"place\": 1.5}}",
                "{\"do\": {\"batch\": \"x\"}}")) {
            List<String> lines = new ArrayList<>(Files.readAllLines(file()));
            lines.add(2, rubbish);
            Files.write(folder.resolve("torn"), lines);
            Recovered recovered =
                    JournalFile.recover(folder.resolve("torn"), ON).orElseThrow();
            assertEquals(new Recovered(List.of(FIRST), Recovered.Basis.SAME_FILE, 2), recovered, rubbish);
        }
    }

    @Test
    void anotherPlanFileIsSaid() throws IOException {
        try (JournalFile journal = JournalFile.start(file(), ON)) {
            journal.add(FIRST);
        }
        assertEquals(
                Optional.of(Recovered.Basis.OTHER_FILE),
                JournalFile.recover(file(), NEXT).map(Recovered::basis));
    }

    @Test
    void aCrashBetweenSaveAndTidyingUpOffersNothingTwice() throws IOException {
        try (JournalFile journal = JournalFile.start(file(), ON)) {
            journal.add(FIRST);
            journal.saving(NEXT);
        }
        assertEquals(Optional.empty(), JournalFile.recover(file(), NEXT), "the save was done");
        assertEquals(
                Optional.of(new Recovered(List.of(FIRST), Recovered.Basis.SAME_FILE, 0)),
                JournalFile.recover(file(), ON),
                "the save was not done");
    }

    @Test
    void aSaveThatFailedLosesNothing() throws IOException {
        try (JournalFile journal = JournalFile.start(file(), ON)) {
            journal.add(FIRST);
            journal.saving(NEXT);
            journal.add(SECOND);
        }
        assertEquals(
                Optional.of(List.of(FIRST, SECOND)),
                JournalFile.recover(file(), ON).map(Recovered::changes));
        assertEquals(
                Optional.of(List.of(SECOND)), JournalFile.recover(file(), NEXT).map(Recovered::changes));
    }

    @Test
    void aJournalThatWasTakenOverGoesOn() throws IOException {
        try (JournalFile journal = JournalFile.start(file(), ON)) {
            journal.add(FIRST);
        }
        Files.writeString(file(), Files.readString(file()) + "{\"do\": {\"tor");
        try (JournalFile journal = JournalFile.resume(file())) {
            journal.add(SECOND);
        }
        assertEquals(
                Optional.of(new Recovered(List.of(FIRST, SECOND), Recovered.Basis.SAME_FILE, 0)),
                JournalFile.recover(file(), ON));
        Files.writeString(file(), "rubbish");
        assertThrows(IOException.class, () -> JournalFile.resume(file()));
    }

    @Test
    void aJournalThatIsNotWantedIsReplacedOrTakenAway() throws IOException {
        Files.writeString(file(), "rubbish of a journal\n");
        assertEquals(Optional.empty(), JournalFile.recover(file(), ON));
        JournalFile journal = JournalFile.start(file(), ON);
        journal.add(FIRST);
        assertEquals(1, JournalFile.recover(file(), ON).orElseThrow().changes().size());
        journal.discard();
        assertEquals(Optional.empty(), JournalFile.recover(file(), ON));
    }

    @Test
    void changesThatNoLongerFitAreLeftOutFromThereOn() {
        Recovered recovered = new Recovered(List.of(SECOND, FIRST, SECOND), Recovered.Basis.OTHER_FILE, 0);
        Change.Batch fitting = recovered.fitting(Plan.EMPTY, "Take over what was not saved");
        assertEquals(new Change.Batch("Take over what was not saved", List.of(SECOND)), fitting);
    }

    @Test
    void aFolderThatTakesNoJournalIsTold() {
        JournalFile journal = JournalFile.start(folder.resolve("no/such/journal"), ON);
        assertThrows(IOException.class, () -> journal.add(FIRST));
    }
}
