package farwatt.workbook;

import java.nio.ByteBuffer;

/**
 * A picture for the summary of a hand-over. Immutable, safe for any thread.
 *
 * @param png the bytes of a PNG file (ISO/IEC 15948) from position to limit
 * @param width in points as it shall appear where there is room; of the picture's own shape
 * @param height in points
 * @param alt what it shows, in words, for those who cannot see it
 */
public record BookPicture(ByteBuffer png, double width, double height, String alt) {
    private static final int[] MARK = {0x89, 'P', 'N', 'G'};

    public BookPicture {
        ByteBuffer copy = ByteBuffer.allocate(png.remaining());
        copy.put(png.duplicate());
        png = copy.flip().asReadOnlyBuffer();
        if (!isPng(png) || !(width > 0) || !(height > 0) || alt.isBlank()) {
            throw new IllegalArgumentException("no picture: " + width + " × " + height + ", " + alt);
        }
    }

    private static boolean isPng(ByteBuffer bytes) {
        for (int i = 0; i < MARK.length; i++) {
            if (bytes.remaining() <= i || (bytes.get(i) & 0xFF) != MARK[i]) {
                return false;
            }
        }
        return true;
    }

    /** The bytes to read from the start. */
    @Override
    public ByteBuffer png() {
        return png.duplicate();
    }
}
