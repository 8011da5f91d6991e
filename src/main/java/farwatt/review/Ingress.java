package farwatt.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Ingress protection by IEC 60529: a digit for solids and one or several for water. Immersion (7, 8) and hot jets (9)
 * say nothing of jets (5, 6), so gear that stands both carries both numbers.
 */
final class Ingress {
    private static final Pattern CODE = Pattern.compile("IP\\s*([0-6X])([0-9X])");
    private static final int JETS = 6;

    /** How a rating stands to a need. */
    enum Fit {
        ENOUGH,
        TOO_LITTLE,
        /** Made for immersion or hot jets, while jets are asked for. */
        OTHER_WATER,
        /** One of the two cannot be read, or leaves open what is asked for. */
        UNKNOWN
    }

    private final List<int[]> ratings;

    private Ingress(List<int[]> ratings) {
        this.ratings = ratings;
    }

    /** Reads {@code IP66}, {@code IP66/IP67}; empty if there is none in the text. */
    static Optional<Ingress> of(String text) {
        List<int[]> found = new ArrayList<>();
        Matcher codes = CODE.matcher(text.toUpperCase(Locale.ROOT));
        while (codes.find()) {
            found.add(new int[] {digit(codes.group(1)), digit(codes.group(2))});
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(new Ingress(found));
    }

    /** An X leaves a digit open. */
    private static int digit(String sign) {
        return sign.equals("X") ? -1 : Integer.parseInt(sign);
    }

    /** Whether gear rated like this may hang where that is needed. */
    Fit fit(Ingress need) {
        Fit worst = Fit.ENOUGH;
        for (int[] wanted : need.ratings) {
            Fit solids = ratings.stream().anyMatch(r -> r[0] >= wanted[0])
                    ? Fit.ENOUGH
                    : ratings.stream().anyMatch(r -> r[0] < 0) ? Fit.UNKNOWN : Fit.TOO_LITTLE;
            Fit water = water(wanted[1]);
            worst = worse(worst, worse(solids, water));
        }
        return worst;
    }

    private Fit water(int wanted) {
        boolean open = false;
        boolean other = false;
        for (int[] rating : ratings) {
            int has = rating[1];
            // every kind of water test above the jets stands for itself and for what drips and splashes
            boolean enough = has >= wanted && (has <= JETS || wanted < JETS - 1 || isImmersion(has, wanted));
            if (enough) {
                return Fit.ENOUGH;
            }
            open |= has < 0;
            other |= has > JETS && has >= wanted;
        }
        return other ? Fit.OTHER_WATER : open ? Fit.UNKNOWN : Fit.TOO_LITTLE;
    }

    private static boolean isImmersion(int has, int wanted) {
        return wanted > JETS && (has == wanted || (has == 8 && wanted == 7));
    }

    private static Fit worse(Fit a, Fit b) {
        return rank(a) >= rank(b) ? a : b;
    }

    private static int rank(Fit fit) {
        return switch (fit) {
            case ENOUGH -> 0;
            case UNKNOWN -> 1;
            case OTHER_WATER -> 2;
            case TOO_LITTLE -> 3;
        };
    }
}
