package farwatt.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import farwatt.plan.Change;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What stands in a journal, line by line, as far as it can be read. */
final class JournalText {
    private static final int VERSION = 1;
    private static final ObjectMapper MAPPER = new ObjectMapper(JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxStringLength(Integer.MAX_VALUE)
                    .build())
            .build());

    private final List<Change> changes = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private Optional<Fingerprint> base = Optional.empty();
    private long end;
    private int unread;

    /** A save that was about to happen after so many changes. */
    private record Mark(Fingerprint saved, int changes) {}

    private JournalText() {}

    static String head(Fingerprint base) {
        return "{\"journal\": " + VERSION + ", \"on\": \"" + base.hex() + "\"}\n";
    }

    static String change(Change change) {
        return "{\"do\": " + ChangeText.of(change) + "}\n";
    }

    static String mark(Fingerprint saved) {
        return "{\"saving\": \"" + saved.hex() + "\"}\n";
    }

    static JournalText read(Path file) throws IOException {
        JournalText text = new JournalText();
        byte[] bytes = Files.readAllBytes(file);
        int from = 0;
        while (from < bytes.length) {
            int to = lineEnd(bytes, from);
            if (to == bytes.length || !text.line(new String(bytes, from, to - from, StandardCharsets.UTF_8))) {
                text.unread = lines(bytes, from);
                break;
            }
            from = to + 1;
            text.end = from;
        }
        return text;
    }

    /** What it stands on; empty where not even the head can be read. */
    Optional<Fingerprint> base() {
        return base;
    }

    /** One past the last byte of the lines that could be read. */
    long end() {
        return end;
    }

    /** What is not in the plan file; empty where nothing is. */
    Optional<Recovered> unsaved(Fingerprint file) {
        int from = 0;
        boolean same = base.equals(Optional.of(file));
        for (Mark mark : marks) {
            if (mark.saved.equals(file)) {
                from = mark.changes;
                same = true;
            }
        }
        List<Change> left = changes.subList(from, changes.size());
        Recovered.Basis basis = same ? Recovered.Basis.SAME_FILE : Recovered.Basis.OTHER_FILE;
        return left.isEmpty() ? Optional.empty() : Optional.of(new Recovered(left, basis, unread));
    }

    private boolean line(String line) {
        try {
            JsonNode node = MAPPER.readTree(line);
            if (base.isEmpty()) {
                base = node.path("journal").asInt() == VERSION
                        ? Optional.of(new Fingerprint(node.path("on").asText()))
                        : Optional.empty();
                return base.isPresent();
            }
            if (node.has("saving")) {
                marks.add(new Mark(new Fingerprint(node.path("saving").asText()), changes.size()));
            } else {
                changes.add(ChangeParser.change(node.path("do")));
            }
            return true;
        } catch (IOException | IllegalArgumentException e) {
            return false;
        }
    }

    private static int lineEnd(byte[] bytes, int from) {
        int at = from;
        while (at < bytes.length && bytes[at] != '\n') {
            at++;
        }
        return at;
    }

    private static int lines(byte[] bytes, int from) {
        int lines = bytes[bytes.length - 1] == '\n' ? 0 : 1;
        for (int i = from; i < bytes.length; i++) {
            lines += bytes[i] == '\n' ? 1 : 0;
        }
        return lines;
    }
}
