package farwatt.window.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TabTextTest {
    @Test
    void tabsPartCellsAndLineBreaksOfAnyKindPartRows() {
        assertEquals(List.of(List.of("a", "b"), List.of("c", "d")), TabText.read("a\tb\nc\td"));
        assertEquals(List.of(List.of("a"), List.of("b"), List.of("c")), TabText.read("a\r\nb\rc\n"));
    }

    @Test
    void emptyCellsStayWhereTheyAre() {
        assertEquals(List.of(List.of("", "x", ""), List.of("", "", "")), TabText.read("\tx\t\n\t\t\n"));
        assertEquals(List.of(List.of("a"), List.of(""), List.of("b")), TabText.read("a\n\nb"));
    }

    @Test
    void quotedCellsHoldTabsBreaksAndQuotes() {
        assertEquals(
                List.of(List.of("two\nlines", "a\tb", "say \"so\"")),
                TabText.read("\"two\nlines\"\t\"a\tb\"\t\"say \"\"so\"\"\""));
    }

    @Test
    void quotesThatDoNotCloseBeforeTheCellEndsAreTextAsItStands() {
        assertEquals(List.of(List.of("\"5\" rack", "x")), TabText.read("\"5\" rack\tx"));
        assertEquals(List.of(List.of("\"open")), TabText.read("\"open"));
    }

    @Test
    void whatIsWrittenReadsBackTheSame() {
        long seed = 20261125;
        Random random = new Random(seed);
        String letters = "ab\t\n\r\" ,'";
        for (int turn = 0; turn < 2000; turn++) {
            int wide = 1 + random.nextInt(4);
            List<List<String>> rows = new ArrayList<>();
            for (int i = 0; i <= random.nextInt(4); i++) {
                List<String> row = new ArrayList<>();
                for (int j = 0; j < wide; j++) {
                    StringBuilder cell = new StringBuilder();
                    for (int k = random.nextInt(5); k > 0; k--) {
                        cell.append(letters.charAt(random.nextInt(letters.length())));
                    }
                    row.add(cell.toString());
                }
                rows.add(row);
            }
            assertEquals(rows, TabText.read(TabText.write(rows)), "seed " + seed + " turn " + turn);
        }
    }
}
