package farwatt.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import farwatt.quantity.Decimal;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PrinterTest {
    private static final int ROUNDS = Boolean.getBoolean("farwatt.soak") ? 1_000_000 : 20_000;

    /** Whatever the shape, what was written is read as the same shape, with either decimal sign. */
    @Test
    void whatIsWrittenIsReadAsTheSame() {
        for (int seed = 0; seed < ROUNDS; seed++) {
            Random random = new Random(seed);
            Expr expr = new RandomExpr(random).any(1 + random.nextInt(5));
            String text = Language.print(expr);
            if (text.length() > Parser.LONGEST) {
                continue;
            }
            for (Decimal decimal : Decimal.values()) {
                Parsed parsed = Language.parse(text, Site.UNITS, decimal);
                String seen = "seed " + seed + ", " + decimal + ": " + text;
                assertEquals(List.of(), parsed.problems(), seen);
                assertEquals(Tree.of(expr), Tree.of(parsed.expr()), seen);
                assertEquals(text, Language.print(parsed.expr()), seen);
            }
        }
    }

    /** No parentheses could be left out: without any one pair the text means something else or nothing. */
    @Test
    void noParenthesesAreWrittenThatCouldBeLeftOut() {
        for (int seed = 0; seed < 2000; seed++) {
            Expr expr = new RandomExpr(new Random(seed)).any(3);
            String text = Language.print(expr);
            for (int open = 0; open < text.length(); open++) {
                String fewer = without(text, open);
                if (!fewer.equals(text)) {
                    Parsed parsed = Language.parse(fewer, Site.UNITS, Decimal.POINT);
                    boolean same = parsed.problems().isEmpty() && Tree.of(expr).equals(Tree.of(parsed.expr()));
                    assertEquals(false, same, "seed " + seed + ": " + text + " could be " + fewer);
                }
            }
        }
    }

    /** Leaves out the parentheses that open at a place, unless they belong to a call or stand in quotes. */
    private static String without(String text, int open) {
        boolean group = text.charAt(open) == '('
                && (open == 0 || " -(.".indexOf(text.charAt(open - 1)) >= 0)
                && !text.substring(0, open).matches("(?s).*['\"].*");
        int nest = 0;
        for (int i = open; group && i < text.length(); i++) {
            nest += text.charAt(i) == '(' ? 1 : text.charAt(i) == ')' ? -1 : 0;
            if (nest == 0) {
                return text.substring(0, open) + text.substring(open + 1, i) + text.substring(i + 1);
            }
        }
        return text;
    }

    @Test
    void whatCouldNotBeReadIsNotWritten() {
        Expr broken = Language.parse("a +", Site.UNITS, Decimal.POINT).expr();
        assertThrows(IllegalArgumentException.class, () -> Language.print(broken));
    }
}
