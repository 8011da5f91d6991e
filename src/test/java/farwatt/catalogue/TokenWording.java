package farwatt.catalogue;

import farwatt.plan.Rows;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A wording for tests that knows words, quoted ids and texts, and nothing of grammar. */
public final class TokenWording implements Wording {
    private static final Pattern TOKEN = Pattern.compile("\"[^\"]*\"|'(?:[^']|'')*'|\\.?[\\p{L}][\\p{L}\\p{N}_]*");

    @Override
    public String canonical(String text, Decimal decimal) {
        String point = decimal == Decimal.COMMA ? text.replaceAll("(\\d),(\\d)", "$1.$2") : text;
        return point.strip().replaceAll(" +", " ");
    }

    @Override
    public String renamed(Table table, String text, Renaming renaming) {
        boolean site = renaming.of().isSite();
        Matcher tokens = TOKEN.matcher(text);
        StringBuilder out = new StringBuilder();
        while (tokens.find()) {
            String token = tokens.group();
            String now = token;
            if (site && Rows.fold(id(token)).equals(Rows.fold(renaming.from()))) {
                now = StepPath.quoted(renaming.to());
            } else if (!site && token.equals(renaming.from())) {
                now = renaming.to();
            }
            tokens.appendReplacement(out, Matcher.quoteReplacement(now));
        }
        return tokens.appendTail(out).toString();
    }

    private static String id(String token) {
        return token.startsWith("'") ? token.substring(1, token.length() - 1).replace("''", "'") : token;
    }
}
