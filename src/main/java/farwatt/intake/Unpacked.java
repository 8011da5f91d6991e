package farwatt.intake;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * A part of a workbook while it unpacks: stops where it swells beyond what its archive announced, so that an archive
 * cannot lie about its size. For one thread.
 */
final class Unpacked extends FilterInputStream {
    private long left;

    /**
     * Watches a part.
     *
     * @param announced bytes the archive says it has, negative where it does not say
     */
    Unpacked(InputStream in, long announced) {
        super(in);
        left = Math.max(Poi.LARGEST_UNASKED, announced);
    }

    @Override
    public int read() throws IOException {
        int one = super.read();
        took(one < 0 ? 0 : 1);
        return one;
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
        int read = super.read(into, from, length);
        took(read);
        return read;
    }

    private void took(int bytes) throws IOException {
        left -= Math.max(0, bytes);
        if (left < 0) {
            throw new IOException(Swelling.ALARM);
        }
    }
}
