package farwatt.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * JSON as text: values copied token by token, so that numbers keep their digits and objects the order of their keys,
 * on one line with a blank after each comma and colon.
 */
final class Json {
    /** Deeper nesting is refused. */
    static final int DEEPEST = 64;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxNumberLength(Integer.MAX_VALUE)
                    .maxStringLength(Integer.MAX_VALUE)
                    .maxNameLength(Integer.MAX_VALUE)
                    .build())
            .build();

    private Json() {}

    static JsonParser parser(String text) throws IOException {
        return FACTORY.createParser(text);
    }

    /** The value at which the parser stands; afterwards it stands at the value's last token. */
    static String copy(JsonParser parser) throws IOException {
        StringBuilder out = new StringBuilder();
        copy(parser, out);
        return out.toString();
    }

    private static void copy(JsonParser parser, StringBuilder out) throws IOException {
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            copyObject(parser, out);
        } else if (token == JsonToken.START_ARRAY) {
            copyArray(parser, out);
        } else if (token == JsonToken.VALUE_STRING) {
            string(out, parser.getText());
        } else {
            out.append(parser.getText());
        }
    }

    private static void copyObject(JsonParser parser, StringBuilder out) throws IOException {
        out.append('{');
        String comma = "";
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            string(out.append(comma), parser.currentName());
            out.append(": ");
            parser.nextToken();
            copy(parser, out);
            comma = ", ";
        }
        out.append('}');
    }

    private static void copyArray(JsonParser parser, StringBuilder out) throws IOException {
        out.append('[');
        String comma = "";
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            out.append(comma);
            copy(parser, out);
            comma = ", ";
        }
        out.append(']');
    }

    /** A text that holds one JSON value, on one line; a text that is no JSON is a bug in who made it. */
    static String oneLine(String json) {
        try (JsonParser parser = parser(json)) {
            if (parser.nextToken() == null) {
                throw new IllegalArgumentException("no JSON value");
            }
            String copy = copy(parser);
            if (parser.nextToken() != null) {
                throw new IllegalArgumentException("more than one JSON value: " + json);
            }
            return copy;
        } catch (IOException e) {
            throw new IllegalArgumentException("no JSON: " + json, e);
        }
    }

    /** The items of a text that holds a JSON list, each on one line. */
    static List<String> items(String json) {
        List<String> items = new ArrayList<>();
        try (JsonParser parser = parser(json)) {
            parser.nextToken();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                items.add(copy(parser));
            }
        } catch (IOException e) {
            throw new IllegalArgumentException("no JSON: " + json, e);
        }
        return items;
    }

    /** Writes a text in quotes. What cannot stand in UTF-8 by itself, half a surrogate pair, is written by its number. */
    static void string(StringBuilder out, String text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < ' ') {
                control(out, c);
            } else if (Character.isSurrogate(c)) {
                i += surrogate(out, text, i);
            } else {
                out.append(c);
            }
        }
        out.append('"');
    }

    private static void control(StringBuilder out, char c) {
        switch (c) {
            case '\n' -> out.append("\\n");
            case '\r' -> out.append("\\r");
            case '\t' -> out.append("\\t");
            default -> byNumber(out, c);
        }
    }

    /** Writes a pair, or half of one by its number; gives how many more characters were used. */
    private static int surrogate(StringBuilder out, String text, int at) {
        char c = text.charAt(at);
        if (at + 1 < text.length() && Character.isSurrogatePair(c, text.charAt(at + 1))) {
            out.append(c).append(text.charAt(at + 1));
            return 1;
        }
        byNumber(out, c);
        return 0;
    }

    private static void byNumber(StringBuilder out, char c) {
        out.append("\\u");
        for (int shift = 12; shift >= 0; shift -= 4) {
            out.append(Character.forDigit(c >> shift & 15, 16));
        }
    }
}
