package farwatt.review;

import farwatt.engine.Corner;
import farwatt.report.Code;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Collects what the checks find: each kind and place once, at the corner where it is worst. */
final class Findings {
    /** Rank of mistakes in cells: after what solved values say, before what only needs a look. */
    static final int MISTAKE = ReviewCode.NO_VALUE.ordinal();

    /** Fills the places of a sentence; called only for drafts whose sentence is needed. */
    @FunctionalInterface
    interface Parts {
        Object[] all();
    }

    private record Key(String code, Place place) {}

    /** The short form of a code's sentence, as a clause of the verdict. */
    record Brief(ReviewCode of) implements Code {
        @Override
        public String room() {
            return of.room();
        }

        @Override
        public String name() {
            return of.name() + "_brief";
        }
    }

    private final Choices choices;
    private final Map<Key, Draft> drafts = new LinkedHashMap<>();
    private final Map<Corner, List<Draft>> fails = new EnumMap<>(Corner.class);
    private final Map<Key, Draft> always = new LinkedHashMap<>();
    private Optional<Corner> corner = Optional.empty();

    Findings(Choices choices) {
        this.choices = choices;
    }

    /** Says in which corner the following is found; empty for what holds in every one. */
    void in(Optional<Corner> now) {
        corner = now;
    }

    void add(ReviewCode code, Level level, Place place, double value, double limit, Parts parts) {
        Optional<Level> chosen = choices.level(code, place.row(), level);
        if (chosen.isEmpty()) {
            return;
        }
        put(new Draft(
                code.key(),
                code.ordinal(),
                chosen.get(),
                corner,
                place,
                value,
                limit,
                () -> Messages.text(code, parts.all()),
                () -> Messages.text(new Brief(code), parts.all()),
                code.source(),
                code.caution().map(Messages::pattern).orElse("")));
    }

    /** A finding without figures. */
    void add(ReviewCode code, Level level, Place place, Parts parts) {
        add(code, level, place, Double.NaN, Double.NaN, parts);
    }

    /** A mistake in a cell, as the engine or the catalogue said it. */
    void add(Notice notice) {
        put(new Draft(
                notice.code(),
                MISTAKE,
                notice.level(),
                Optional.empty(),
                notice.place(),
                Double.NaN,
                Double.NaN,
                notice::text,
                () -> notice.line().replaceFirst("\\.( .*)?$", ""),
                "",
                ""));
    }

    private void put(Draft draft) {
        Key key = new Key(draft.code(), draft.place());
        Draft before = drafts.get(key);
        if (before == null || draft.worseThan(before)) {
            drafts.put(key, draft);
        }
        if (draft.level() != Level.FAIL) {
            return;
        }
        if (draft.corner().isPresent()) {
            fails.computeIfAbsent(draft.corner().get(), c -> new ArrayList<>()).add(draft);
        } else {
            always.putIfAbsent(key, draft);
        }
    }

    /** All of them, each kind and place once. */
    Collection<Draft> all() {
        return drafts.values();
    }

    /** What fails in a corner and not in every one. */
    List<Draft> failsIn(Corner which) {
        return fails.getOrDefault(which, List.of());
    }

    /** What fails whatever the corner. */
    Collection<Draft> failsAlways() {
        return always.values();
    }
}
