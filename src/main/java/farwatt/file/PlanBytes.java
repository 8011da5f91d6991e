package farwatt.file;

import farwatt.report.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Bytes of a plan file and their text, each refused in one sentence where they cannot be had. */
final class PlanBytes {
    /** What stands in a text where its bytes were none, or where someone wrote just this. */
    private static final char REPLACED = '\ufffd';

    private PlanBytes() {}

    /** Reads a file, never more than so many bytes. */
    static byte[] read(Path path, int most) throws Refusal {
        if (Files.isDirectory(path)) {
            throw Refusal.of(FileCode.FOLDER, path);
        }
        try {
            if (Files.size(path) > most) {
                throw tooLarge(path, most);
            }
            try (InputStream in = Files.newInputStream(path)) {
                byte[] bytes = in.readNBytes(most + 1);
                if (bytes.length > most) {
                    throw tooLarge(path, most);
                }
                return bytes;
            }
        } catch (NoSuchFileException e) {
            throw Refusal.of(FileCode.MISSING, path);
        } catch (IOException e) {
            throw Refusal.of(FileCode.UNREADABLE, path);
        }
    }

    private static Refusal tooLarge(Path path, int most) {
        return Refusal.of(FileCode.TOO_LARGE, path, most >> 20);
    }

    /** The text of UTF-8 bytes, a mark at their start left out. */
    static String text(byte[] bytes, String file) throws Refusal {
        String text = new String(bytes, StandardCharsets.UTF_8);
        if (text.indexOf(REPLACED) >= 0) {
            checkUtf8(bytes, file);
        }
        return text.startsWith("\ufeff") ? text.substring(1) : text;
    }

    private static void checkUtf8(byte[] bytes, String file) throws Refusal {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        if (decoder.decode(in, CharBuffer.allocate(bytes.length), true).isError()) {
            throw Refusal.of(FileCode.NOT_UTF8, file, line(bytes, in.position()));
        }
    }

    private static int line(byte[] bytes, int to) {
        int line = 1;
        for (int i = 0; i < to; i++) {
            line += bytes[i] == '\n' ? 1 : 0;
        }
        return line;
    }
}
