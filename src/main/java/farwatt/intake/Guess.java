package farwatt.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a column may mean.
 *
 * @param meaning the meaning
 * @param confidence 0..1
 * @param reason which word, unit or content speaks for it
 */
record Guess(Meaning meaning, double confidence, String reason) {
    private static final Comparator<Guess> BEST_FIRST =
            Comparator.comparingDouble(Guess::confidence).reversed();

    /** What a heading can mean, the likeliest first. */
    static List<Guess> of(HeadingText heading) {
        List<Guess> withUnit = guesses(heading);
        Optional<ListUnit> unit = heading.unit();
        boolean supported = withUnit.stream().anyMatch(g -> g.confidence() >= 0.5);
        if (unit.isEmpty() || supported || !needsSupport(heading)) {
            return withUnit;
        }
        return guesses(heading.withoutUnit());
    }

    /** A lone letter at the end of a heading may be the name of a building. */
    private static boolean needsSupport(HeadingText heading) {
        return !heading.bracketed() && heading.unit().orElseThrow().measure() != Measure.POWER;
    }

    private static List<Guess> guesses(HeadingText heading) {
        Map<Meaning, Guess> best = new EnumMap<>(Meaning.class);
        String[] tokens =
                heading.words().isEmpty() ? new String[0] : heading.words().split(" ", -1);
        for (int from = 0; from < tokens.length; from++) {
            StringBuilder phrase = new StringBuilder();
            for (int to = from; to < Math.min(tokens.length, from + 4); to++) {
                phrase.append(to > from ? " " : "").append(tokens[to]);
                addPhrase(best, phrase.toString(), (double) (to - from + 1) / tokens.length);
            }
        }
        Measure measure = heading.unit().map(ListUnit::measure).orElse(Measure.NONE);
        if (measure != Measure.NONE) {
            weighUnit(best, heading, measure);
        }
        modify(best, tokens);
        if (isSaid("total", tokens)) {
            best.computeIfPresent(
                    Meaning.WATTS, (m, g) -> new Guess(m, Math.min(g.confidence() - 0.02, 0.7), g.reason()));
        }
        List<Guess> all = new ArrayList<>(best.values());
        all.sort(BEST_FIRST);
        return all;
    }

    private static void addPhrase(Map<Meaning, Guess> best, String phrase, double coverage) {
        for (Words.Entry entry : Words.headings(phrase)) {
            double full = entry.weak() ? 0.65 : 1;
            double part = entry.weak() ? 0.35 + 0.2 * coverage : 0.55 + 0.35 * coverage;
            double confidence = coverage == 1 ? full : part;
            Guess guess = new Guess(entry.meaning(), confidence, "the word \"" + phrase + "\"");
            best.merge(entry.meaning(), guess, (a, b) -> a.confidence() >= b.confidence() ? a : b);
        }
    }

    /** A unit speaks for what it measures and against everything else that is measured. */
    private static void weighUnit(Map<Meaning, Guess> best, HeadingText heading, Measure measure) {
        String symbol = heading.unit().orElseThrow().symbol();
        boolean fits = best.values().stream().anyMatch(g -> g.meaning().measure() == measure);
        best.values().removeIf(g -> g.meaning().isMeasured() && g.meaning().measure() != measure);
        if (fits) {
            best.values().removeIf(g -> g.meaning().measure() != measure);
            if (best.values().stream().anyMatch(g -> g.meaning().isReading())) {
                best.values().removeIf(g -> !g.meaning().isReading());
            }
            best.replaceAll(
                    (m, g) -> new Guess(m, Math.min(1, g.confidence() + 0.1), g.reason() + " and the unit " + symbol));
        } else {
            best.values().removeIf(g -> g.meaning() != Meaning.OWN);
            Meaning meaning = ofMeasure(measure);
            best.putIfAbsent(meaning, new Guess(meaning, 0.6, "the unit " + symbol));
        }
    }

    private static Meaning ofMeasure(Measure measure) {
        return switch (measure) {
            case POWER -> Meaning.WATTS;
            case CURRENT -> Meaning.CURRENT;
            case VOLTS -> Meaning.VOLTS;
            case LENGTH -> Meaning.LENGTH;
            case RATE -> Meaning.BITRATE;
            case GAUGE -> Meaning.GAUGE;
            case MONEY -> Meaning.PRICE;
            case TEMPERATURE, SHARE, NONE -> Meaning.OWN;
        };
    }

    /** "Day", "night", "start" beside a power word say which watts are meant. */
    private static void modify(Map<Meaning, Guess> best, String[] tokens) {
        Guess watts = best.get(Meaning.WATTS);
        if (watts == null) {
            return;
        }
        boolean both = isSaid("typical", tokens) && isSaid("most", tokens);
        for (String token : both ? new String[0] : tokens) {
            double up = Math.min(1, Math.max(watts.confidence(), 0.8));
            if (Words.isRemark("typical", token)) {
                best.remove(Meaning.WATTS);
                best.put(Meaning.WATTS_TYPICAL, new Guess(Meaning.WATTS_TYPICAL, up, watts.reason() + ", " + token));
                return;
            }
            if (Words.isRemark("start", token)) {
                best.remove(Meaning.WATTS);
                best.put(Meaning.WATTS_START, new Guess(Meaning.WATTS_START, up, watts.reason() + ", " + token));
                return;
            }
            if (Words.isRemark("most", token)) {
                best.put(Meaning.WATTS, new Guess(Meaning.WATTS, up, watts.reason() + ", " + token));
            }
        }
    }

    private static boolean isSaid(String group, String[] tokens) {
        for (String token : tokens) {
            if (Words.isRemark(group, token)) {
                return true;
            }
        }
        return false;
    }

    static void sort(List<Guess> guesses) {
        guesses.sort(BEST_FIRST);
    }
}
