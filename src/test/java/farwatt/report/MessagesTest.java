package farwatt.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.catalogue.CatalogueCode;
import farwatt.document.DocumentCode;
import farwatt.file.FileCode;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class MessagesTest {
    private enum Strange implements Code {
        UNHEARD;

        @Override
        public String room() {
            return "file";
        }
    }

    @Test
    void everyCodeHasASentenceAndEverySentenceACode() throws IOException {
        check(CatalogueCode.values());
        check(DocumentCode.values());
        check(FileCode.values());
    }

    private static void check(Code[] codes) throws IOException {
        Set<String> keys = Stream.of(codes).map(Code::key).collect(Collectors.toCollection(TreeSet::new));
        Properties sentences = new Properties();
        try (InputStream in =
                Messages.class.getResourceAsStream("/farwatt/messages/" + codes[0].room() + ".properties")) {
            sentences.load(new InputStreamReader(Objects.requireNonNull(in), StandardCharsets.UTF_8));
        }
        assertEquals(keys, new TreeSet<>(sentences.stringPropertyNames()));
        for (Code code : codes) {
            assertTrue(!Messages.pattern(code).isBlank(), code.key());
        }
    }

    @Test
    void placesAreFilledAndWhatIsPutInIsNotLookedAtAgain() {
        assertEquals("{1} is a count and must be a whole number", Messages.text(CatalogueCode.NOT_WHOLE, "{1}"));
        assertEquals("Rename a to b", Messages.text(CatalogueCode.EDIT_RENAME, "a", "b"));
    }

    @Test
    void aCodeWithoutASentenceIsABug() {
        assertThrows(IllegalStateException.class, () -> Messages.text(Strange.UNHEARD));
    }

    @Test
    void aNoticeReadsPlaceFirst() {
        assertEquals("trunk · length", new Place("runs", "trunk", "length").text());
        assertEquals("runs", new Place("runs", "", "").text());
        assertEquals("runs · length", new Place("runs", "", "length").text());
        assertEquals("slack", new Place("", "", "slack").text());
        assertEquals("", Place.NONE.text());
        Notice notice = Notice.of(Level.WARN, CatalogueCode.NOT_WHOLE, Place.row("runs", "trunk"), "2.5");
        assertEquals("trunk: 2.5 is a count and must be a whole number", notice.line());
        assertEquals("catalogue.not_whole", notice.code());
        assertEquals("no place", new Notice(Level.NOTE, "x", Place.NONE, "no place").line());
        assertEquals(
                List.of("fail", "warn", "note"),
                Stream.of(Level.values()).map(Level::word).toList());
    }

    @Test
    void aRefusalSaysItsSentence() {
        Refusal refusal = Refusal.of(FileCode.EMPTY, "quay.json");
        assertEquals("quay.json is empty; open an earlier copy of the plan", refusal.getMessage());
        assertEquals("file.empty", refusal.notice().code());
    }

    @Test
    void cancelLeavesOnlyWhenAsked() {
        Cancel cancel = new Cancel();
        cancel.check();
        cancel.ask();
        assertTrue(cancel.asked());
        assertThrows(CancellationException.class, cancel::check);
        assertThrows(IllegalArgumentException.class, () -> new Span(3, 2));
    }
}
