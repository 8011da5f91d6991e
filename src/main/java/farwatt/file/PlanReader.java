package farwatt.file;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import farwatt.report.Refusal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Opens plan files. What is not understood is told and kept, so that saving writes it back; only what is no plan file
 * at all is refused. Safe for any thread.
 */
public final class PlanReader {
    /** Larger files are refused unread: 64 MB. */
    public static final int MOST_BYTES = 64 << 20;

    private PlanReader() {}

    /**
     * Reads a plan file.
     *
     * @throws Refusal if it cannot be read or is no plan file
     */
    public static Opened read(Path path) throws Refusal {
        return read(PlanBytes.read(path, MOST_BYTES), path.toString());
    }

    /**
     * Reads the bytes of a plan file.
     *
     * @param file what the file is called in sentences
     * @throws Refusal if they are no plan file
     */
    public static Opened read(byte[] bytes, String file) throws Refusal {
        if (bytes.length > MOST_BYTES) {
            throw Refusal.of(FileCode.TOO_LARGE, file, MOST_BYTES >> 20);
        }
        String text = PlanBytes.text(bytes, file);
        PlanParts parts = parse(text, file);
        return parts.opened(Fingerprint.of(bytes));
    }

    private static PlanParts parse(String text, String file) throws Refusal {
        try (JsonParser parser = Json.parser(text)) {
            if (parser.nextToken() == null) {
                throw Refusal.of(FileCode.EMPTY, file);
            }
            Optional<PlanParts> parts = new PlanParser(parser, file).read();
            if (parser.nextToken() != null) {
                JsonLocation at = parser.currentTokenLocation();
                throw Refusal.of(FileCode.NOT_JSON, file, at.getLineNr(), at.getColumnNr());
            }
            return parts.orElseThrow(() -> Refusal.of(FileCode.OTHER_KIND, file));
        } catch (StreamConstraintsException e) {
            throw Refusal.of(FileCode.TOO_DEEP, file, Json.DEEPEST);
        } catch (JsonEOFException e) {
            throw Refusal.of(FileCode.CUT_OFF, file);
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            throw Refusal.of(FileCode.NOT_JSON, file, at.getLineNr(), at.getColumnNr());
        } catch (IOException e) {
            throw Refusal.of(FileCode.UNREADABLE, file);
        }
    }
}
