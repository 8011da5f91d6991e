package farwatt.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.report.Span;
import org.junit.jupiter.api.Test;

class MarkedTest {
    @Test
    void putsCaretsUnderTheStretch() {
        assertEquals("draw + 5 V\n       ^^^", Marked.show("draw + 5 V", new Span(7, 10)));
    }

    @Test
    void aPointGetsOneCaret() {
        assertEquals("draw +\n      ^", Marked.show("draw +", new Span(6, 6)));
    }

    @Test
    void lineEndsAndTabsAreShownAsSpaces() {
        assertEquals("a + b\n    ^", Marked.show("a\n+\tb", new Span(4, 5)));
    }

    @Test
    void wideLettersTakeTwoColumnsAndMarksNone() {
        assertEquals("カメラ + x\n         ^", Marked.show("カメラ + x", new Span(6, 7)));
        assertEquals("e\u0301 + x\n    ^", Marked.show("e\u0301 + x", new Span(5, 6)));
    }

    @Test
    void ofALongTextOnlyThePlaceIsShown() {
        String text = "a + ".repeat(100) + "drw" + " + a".repeat(100);
        String shown = Marked.show(text, new Span(400, 403));
        String[] lines = shown.split("\n", -1);
        assertTrue(lines[0].length() < 110 && lines[0].startsWith("…") && lines[0].endsWith("…"), shown);
        assertEquals("drw", lines[0].substring(lines[1].indexOf('^'), lines[1].length()));
    }

    @Test
    void aStretchBeyondTheTextIsMarkedAtItsEnd() {
        assertEquals("a\n ^", Marked.show("a", new Span(5, 9)));
    }
}
