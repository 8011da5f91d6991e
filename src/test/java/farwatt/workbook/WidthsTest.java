package farwatt.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class WidthsTest {
    private static int width(Column column, Entry... entries) {
        Widths widths = new Widths(List.of(column));
        for (Entry entry : entries) {
            widths.see(0, entry);
        }
        return widths.all()[0];
    }

    @Test
    void aNumberIsAsWideAsItIsShown() {
        Column ohms = Column.of("n", "n", Form.THREE);
        assertEquals("-1234.500".length() + Widths.AIR, width(ohms, Entry.number(-1234.5), Entry.number(2)));
        assertEquals("100.0%".length() + Widths.AIR, width(Column.of("n", "n", Form.SHARE), Entry.number(1)));
        assertEquals("1000".length() + Widths.AIR, width(Column.of("n", "n", Form.WHOLE), Entry.number(1000)));
    }

    @Test
    void aLongTextDoesNotMakeAColumnEndless() {
        Entry text = Entry.words("word ".repeat(100));
        assertEquals(Form.SENTENCE.widest() + Widths.AIR, width(Column.of("n", "n", Form.SENTENCE), text));
        assertTrue(width(Column.of("n", "n", Form.WORD), text) < 50);
    }

    @Test
    void theLongestLineOfATextCounts() {
        Column column = Column.of("n", "n", Form.SENTENCE);
        assertEquals("second line".length() + Widths.AIR, width(column, Entry.words("one\nsecond line")));
    }

    @Test
    void charactersOfEastAsianScriptsAreTwiceAsWide() {
        assertEquals(4, Widths.length("岸壁"));
        assertEquals(6, Widths.length("カメラ"));
        assertEquals(4, Widths.length("기둥"));
        assertEquals(5, Widths.length("Kai 1"));
        assertEquals(1, Widths.length("😀"));
    }

    @Test
    void noWordOfAHeadingIsBroken() {
        Column column = Column.of("n", "temperature of conductors", Form.ONE).in("°C");
        assertTrue(width(column, Entry.number(1)) >= "temperature".length());
        assertTrue(width(column, Entry.number(1)) < "temperature of conductors, °C".length());
    }

    @Test
    void linesAreCountedAsWordsWrap() {
        assertEquals(1, Widths.lines("", 10));
        assertEquals(1, Widths.lines("0123456789", 10));
        assertEquals(2, Widths.lines("0123456789 a", 10));
        assertEquals(2, Widths.lines("ab cd\nef", 10));
        assertEquals(3, Widths.lines("0123456789012345678901234", 10));
        assertEquals(2, Widths.lines("aaaa bbbb cccc", 10));
    }
}
