package farwatt.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.junit.jupiter.api.Test;

/** Large parts of a workbook: cells of people are read, what repeats itself without end is not. */
class LargePartsTest {
    private static final long MB = 1L << 20;

    @Test
    void aLargeSheetThatPacksAsCellsDoIsRead() {
        assertFalse(Poi.swells(80 * MB, 8 * MB));
        assertFalse(Poi.swells(40 * MB, 40_000), "a small part may repeat itself");
    }

    @Test
    void aLargePartThatPacksToNothingIsNot() {
        assertTrue(Poi.swells(120 * MB, MB / 8));
        assertTrue(Poi.swells(900 * MB, 300 * MB), "too large however it packs");
    }

    @Test
    void aPartLargerThanItsArchiveSaysStops() throws IOException {
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return ' ';
            }

            @Override
            public int read(byte[] into, int from, int length) {
                return length;
            }
        };
        long read = 0;
        byte[] step = new byte[1 << 16];
        InputStream watched = new Unpacked(endless, 60 * MB);
        for (; read < 60 * MB; read += watched.read(step)) {}
        IOException stopped = assertThrows(IOException.class, () -> watched.read(step));
        assertTrue(Swelling.isCause(stopped));
        assertEquals(1, new Unpacked(new ByteArrayInputStream(new byte[] {1}), 0).read());
    }
}
