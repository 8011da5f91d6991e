package farwatt.script;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MoreLinesTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "plan.get('a')",
                "let a = 1;",
                "for (const x of [1]) { print(x) }",
                "'an open text",
                "\"(\"",
                "`a ${[1, 2].map((x) => `${x}`)} b`",
                "a / b / c",
                "/[(]/.test('x')",
                "'it\\'s'",
                "i++",
                "f() // (",
                "/* ( */ 1",
                ")"
            })
    void whatIsWholeRuns(String text) {
        assertTrue(MoreLines.isComplete(text), text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sweep({over:",
                "for (const x of [1]) {",
                "let a =",
                "a +",
                "f(1,",
                "`open",
                "`open ${",
                "`open ${a",
                "/* open",
                "const f = (x) =>",
                "plan.",
                "[1, 2"
            })
    void whatIsOpenGoesOnInTheNextLine(String text) {
        assertFalse(MoreLines.isComplete(text), text);
    }

    @Test
    void wordsGoOnFromWhatIsTyped() {
        assertTrue(Words.complete("x = plan.sc").stream()
                .map(Words.Word::name)
                .toList()
                .equals(List.of("plan.scenario")));
        assertTrue(Words.near("sensitivty").orElseThrow().name().equals("sensitivity"));
        assertTrue(Words.near("zzz").isEmpty());
    }
}
