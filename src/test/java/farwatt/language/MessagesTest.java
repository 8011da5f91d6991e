package farwatt.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import farwatt.quantity.Decimal;
import farwatt.report.Code;
import farwatt.report.Messages;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class MessagesTest {
    private static Stream<Code> codes() {
        List<Code[]> all =
                List.of(ProblemCode.values(), FaultKind.values(), Phrase.values(), Keyword.values(), Function.values());
        return all.stream().flatMap(Stream::of);
    }

    @ParameterizedTest
    @MethodSource("codes")
    void everyCodeHasASentence(Code code) {
        assertFalse(Messages.pattern(code).isBlank());
    }

    @Test
    void everySentenceHasACode() throws IOException {
        Properties sentences = new Properties();
        try (InputStream in = Objects.requireNonNull(
                MessagesTest.class.getResourceAsStream("/farwatt/messages/language.properties"))) {
            sentences.load(in);
        }
        Set<String> keys = new TreeSet<>();
        codes().forEach(code -> keys.add(code.key()));
        assertEquals(keys, new TreeSet<>(sentences.stringPropertyNames()));
    }

    static Stream<Arguments> sentences() {
        return Table.rows("/language/sentences.txt", 4);
    }

    @ParameterizedTest
    @MethodSource("sentences")
    void saysWhatWasFoundAndWhatWasWanted(String row, String text, String wanted, String sentence) {
        Parsed parsed = Language.parse(text, Site.UNITS, Decimal.POINT);
        Checked checked = Language.check(parsed, new Site().at(row), Said.wanted(wanted));
        assertEquals(sentence, checked.problems().get(0).text());
    }
}
