package farwatt.intake;

import farwatt.report.Messages;
import farwatt.report.Notice;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Parts a text into rows and cells. */
final class TextList {
    private static final char TAB = '\t';
    private static final Pattern GAP = Pattern.compile(" {2,}");
    private static final Map<Character, String> SHOWN =
            Map.of('\t', "tab", ';', "semicolon", ',', "comma", '|', "bar", ':', "colon", '\u001f', "unit separator");

    private TextList() {}

    static ListFile of(byte[] bytes, Mapping mapping) {
        String wanted = mapping.answer("encoding", "");
        Encoding encoding = Encoding.named(bytes, wanted).orElseGet(() -> Encoding.of(bytes));
        List<Question> questions = new ArrayList<>();
        if (!encoding.sure()) {
            questions.add(new Question(
                    "encoding",
                    Messages.text(IntakeSays.ASK_ENCODING, encoding.name()),
                    List.of("windows-1252", "windows-1250", "ISO-8859-2", "IBM850", "x-MacRoman", "windows-1251"),
                    encoding.name()));
        }
        ListFile read = of(encoding.text(), mapping);
        List<Notice> notices = new ArrayList<>();
        notices.add(ListFile.note(IntakeSays.READ_ENCODING, encoding.name()));
        notices.addAll(read.notices());
        questions.addAll(read.questions());
        return new ListFile(read.sheets(), notices, questions);
    }

    static ListFile of(String typed, Mapping mapping) {
        String text = withoutMark(typed);
        int end = endOfLine(text);
        Optional<Character> stated = Delimiter.stated(text.substring(0, end));
        if (stated.isPresent()) {
            // the line stays a row so that the lines keep their numbers
            List<RawRow> rows = new ArrayList<>(Splitter.split(text, stated.get()));
            return parted(rows.subList(1, rows.size()), stated.get());
        }
        String wanted = mapping.answer("delimiter", "");
        Optional<Character> delimiter = wanted.isEmpty() ? Delimiter.guess(text, mapping) : named(wanted);
        if (delimiter.isPresent()) {
            return parted(Splitter.split(text, delimiter.get()), delimiter.get());
        }
        String gapped = GAP.matcher(text).replaceAll("\t");
        Optional<Character> byGaps = gapped.equals(text) ? Optional.empty() : Delimiter.guess(gapped, mapping);
        if (byGaps.isPresent() && byGaps.get() == TAB) {
            return parted(Splitter.split(gapped, TAB), TAB);
        }
        return parted(Splitter.split(text, TAB), TAB);
    }

    private static ListFile parted(List<RawRow> rows, char delimiter) {
        String shown = SHOWN.getOrDefault(delimiter, String.valueOf(delimiter));
        return new ListFile(
                List.of(Sheet.ofText(rows)), List.of(ListFile.note(IntakeSays.READ_DELIMITER, shown)), List.of());
    }

    private static Optional<Character> named(String word) {
        for (Map.Entry<Character, String> entry : SHOWN.entrySet()) {
            if (entry.getValue().equals(word)) {
                return Optional.of(entry.getKey());
            }
        }
        return word.length() == 1 ? Optional.of(word.charAt(0)) : Optional.empty();
    }

    private static String withoutMark(String text) {
        return text.startsWith("\ufeff") ? text.substring(1) : text;
    }

    private static int endOfLine(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) == '\n' || text.charAt(i) == '\r') {
                return i;
            }
        }
        return text.length();
    }
}
