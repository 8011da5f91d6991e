package farwatt.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Decides what each column means: first what a kept mapping lays down, then the surest guess of all columns, then the
 * next surest of what is left.
 */
final class Mapper {
    private static final Set<Meaning> MANY =
            EnumSet.of(Meaning.OWN, Meaning.SERIAL, Meaning.MAC, Meaning.ASSET, Meaning.LEAVE_OUT, Meaning.INDEX);

    private record Bid(int column, Guess guess) {}

    private final List<HeadingText> headings;
    private final List<RawRow> rows;
    private final Mapping mapping;
    private final Set<Integer> left;
    private final List<Listing.Rival> rivals = new ArrayList<>();

    /**
     * @param headings one a column
     * @param rows the rows under them
     * @param mapping what is laid down
     * @param left columns to leave out
     */
    Mapper(List<HeadingText> headings, List<RawRow> rows, Mapping mapping, Set<Integer> left) {
        this.headings = headings;
        this.rows = rows;
        this.mapping = mapping;
        this.left = left;
    }

    /** The columns that have a heading or content. */
    List<Column> columns() {
        Map<Integer, Guess> settled = new HashMap<>();
        List<Bid> bids = new ArrayList<>();
        for (int at = 0; at < headings.size(); at++) {
            ColumnContent content = new ColumnContent(rows, at);
            HeadingText heading = headings.get(at);
            if (heading.shown().isEmpty() && content.isEmpty()) {
                continue;
            }
            if (left.contains(at)) {
                settled.put(at, new Guess(Meaning.LEAVE_OUT, 1, "a hidden column"));
            } else if (mapping.meaning(heading.shown()).isPresent()) {
                settled.put(at, new Guess(mapping.meaning(heading.shown()).get(), 1, "the mapping"));
            } else {
                for (Guess guess : weighed(heading, content)) {
                    bids.add(new Bid(at, guess));
                }
            }
        }
        settle(bids, settled);
        return named(settled);
    }

    private void settle(List<Bid> bids, Map<Integer, Guess> settled) {
        Set<Meaning> taken = new HashSet<>();
        settled.values().forEach(guess -> taken.add(guess.meaning()));
        bids.sort(Comparator.comparingDouble((Bid b) -> b.guess().confidence()).reversed());
        for (Bid bid : bids) {
            Meaning meaning = bid.guess().meaning();
            boolean free = MANY.contains(meaning) || !taken.contains(meaning);
            if (!free && !settled.containsKey(bid.column()) && meaning.isMeasured()) {
                rival(bid, settled);
            }
            if (!settled.containsKey(bid.column()) && free) {
                settled.put(bid.column(), bid.guess());
                taken.add(meaning);
            }
        }
    }

    private void rival(Bid bid, Map<Integer, Guess> settled) {
        settled.forEach((column, guess) -> {
            if (guess.meaning() == bid.guess().meaning()) {
                rivals.add(new Listing.Rival(
                        headings.get(bid.column()).shown(), headings.get(column).shown()));
            }
        });
    }

    /** Columns that could have meant the same as another; known after {@link #columns}. */
    List<Listing.Rival> rivals() {
        return rivals;
    }

    /** The guesses of the heading, corrected by what stands under it. */
    private static List<Guess> weighed(HeadingText heading, ColumnContent content) {
        List<Guess> guesses = new ArrayList<>();
        for (Guess guess : Guess.of(heading)) {
            if (fits(guess.meaning(), content)) {
                guesses.add(guess);
            }
        }
        content.guess().ifPresent(by -> addContent(guesses, by));
        guesses.removeIf(g -> g.meaning() == Meaning.CABLE);
        if (content.countsRows()
                && !heading.words().isEmpty()
                && guesses.stream().anyMatch(Mapper::mayCount)) {
            guesses.removeIf(g -> g.meaning() == Meaning.QUANTITY);
        } else {
            guesses.removeIf(g -> g.meaning() == Meaning.INDEX);
        }
        guesses.add(new Guess(Meaning.OWN, 0.1, "no word known"));
        Guess.sort(guesses);
        return guesses;
    }

    private static boolean mayCount(Guess guess) {
        return guess.meaning() == Meaning.INDEX;
    }

    private static boolean fits(Meaning meaning, ColumnContent content) {
        if (content.isEmpty()) {
            return true;
        }
        return switch (meaning) {
            case LENGTH, CORD_LENGTH, FIXED_LENGTH, QUANTITY -> content.digits() > 0.3;
            case INGRESS -> content.addresses() < 0.5;
            case NAME, KIND, ZONE -> content.dates() < 0.5;
            default -> true;
        };
    }

    /** A weak or general heading gives way to what its cells clearly are. */
    private static void addContent(List<Guess> guesses, Guess by) {
        boolean general = guesses.isEmpty()
                || guesses.get(0).confidence() < 0.7
                || guesses.stream().anyMatch(g -> g.meaning() == Meaning.KIND || g.meaning() == Meaning.CABLE);
        boolean same = guesses.stream().anyMatch(g -> g.meaning() == by.meaning());
        if (general && !same) {
            boolean telling = by.meaning() == Meaning.CLASS
                    || by.meaning() == Meaning.SHEATH
                    || by.meaning() == Meaning.CATEGORY
                    || by.meaning() == Meaning.GAUGE;
            guesses.add(new Guess(by.meaning(), telling ? 0.95 : 0.62, by.reason()));
            if (telling) {
                guesses.removeIf(g -> g.meaning() == Meaning.KIND);
            }
        }
    }

    /** Without a column of names and of kinds the first column of texts names the devices. */
    private List<Column> named(Map<Integer, Guess> settled) {
        boolean known =
                settled.values().stream().anyMatch(g -> g.meaning() == Meaning.NAME || g.meaning() == Meaning.KIND);
        List<Column> columns = new ArrayList<>();
        for (int at = 0; at < headings.size(); at++) {
            Guess guess = settled.get(at);
            if (guess == null) {
                continue;
            }
            if (!known && guess.confidence() < 0.5 && isTexts(at)) {
                guess = new Guess(Meaning.NAME, 0.4, "the first column of texts");
                known = true;
            }
            columns.add(new Column(at, headings.get(at), guess));
        }
        return columns;
    }

    private boolean isTexts(int at) {
        ColumnContent content = new ColumnContent(rows, at);
        return !content.isEmpty() && content.numbers() < 0.2 && content.dates() < 0.2;
    }
}
