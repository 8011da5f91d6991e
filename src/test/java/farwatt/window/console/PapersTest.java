package farwatt.window.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.script.Script;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PapersTest {
    private static final Path ROOT = Path.of(System.getProperty("farwatt.root", "."));

    @TempDir
    Path folder;

    private final Papers papers = new Papers(Runnable::run, Runnable::run);
    private final List<Notice> said = new ArrayList<>();

    @Test
    void everySampleComesAlongAndSaysWhatItIsFor() throws IOException {
        try (Stream<Path> files = Files.list(ROOT.resolve("scripts"))) {
            Set<String> there = files.map(file -> file.getFileName().toString()).collect(Collectors.toSet());
            assertEquals(there, Set.copyOf(Samples.NAMES));
        }
        for (String name : Samples.NAMES) {
            assertFalse(Samples.about(name).isBlank(), name);
            assertEquals(Files.readString(ROOT.resolve("scripts").resolve(name)), Samples.text(name));
        }
    }

    @Test
    void aSampleIsChangedAndSavedElsewhereAndKeepsItsFolderForModules() throws IOException {
        papers.write("begun line");
        papers.sample("fleet-of-300-sites.js");
        assertFalse(papers.now().isUnsaved());
        papers.write("print(1)");
        assertTrue(papers.now().isUnsaved());
        papers.save(folder.resolve("mine"), said::add);
        assertEquals(Level.NOTE, said.get(0).level(), said::toString);
        assertFalse(papers.now().isUnsaved());
        assertEquals("print(1)", Files.readString(folder.resolve("mine.js")));
        Script script = papers.now().script();
        assertEquals(Script.Kind.FILE, script.kind());
        assertEquals(folder.toRealPath(), script.folder().orElseThrow());
        papers.lines();
        assertEquals("begun line", papers.now().text());
        papers.open(folder.resolve("mine.js"), wrong -> wrong.ifPresent(said::add));
        assertEquals("print(1)", papers.now().text());
        assertEquals(1, said.size());
    }

    @Test
    void whatCannotBeOpenedOrSavedIsOneSentence() throws IOException {
        papers.open(folder.resolve("none.js"), wrong -> wrong.ifPresent(said::add));
        Files.write(folder.resolve("odd.js"), new byte[] {(byte) 0xC3, 0x28});
        papers.open(folder.resolve("odd.js"), wrong -> wrong.ifPresent(said::add));
        papers.save(folder.resolve("no such folder").resolve("a.js"), said::add);
        Files.createDirectory(folder.resolve("taken.js"));
        papers.save(folder.resolve("taken.js"), said::add);
        assertEquals(4, said.size(), said::toString);
        assertTrue(said.stream().allMatch(notice -> notice.level() == Level.FAIL), said::toString);
        assertTrue(papers.now().isLines());
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(2, files.count(), "nothing half written is left");
        }
    }
}
