package farwatt.language;

import farwatt.report.Messages;
import farwatt.report.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Collects what is wrong with a text; past a handful there is no use in more. */
final class Problems {
    static final int MOST = 20;

    private final List<Problem> all = new ArrayList<>();

    Problems() {}

    Problems(List<Problem> before) {
        all.addAll(before);
    }

    void add(Span span, ProblemCode code, Object... parts) {
        if (!full()) {
            all.add(new Problem(span, code, Messages.text(code, parts), Optional.empty()));
        }
    }

    /** With what can be put in the place; the sentence says so already. */
    void instead(Span span, ProblemCode code, String instead, Object... parts) {
        if (!full()) {
            all.add(new Problem(span, code, Messages.text(code, parts), Optional.of(instead)));
        }
    }

    /** With a question after the sentence if something is near. */
    void near(Span span, ProblemCode code, Optional<String> near, Object... parts) {
        near(span, code, () -> near, parts);
    }

    /** The same with a search that is left out once there are too many. */
    void near(Span span, ProblemCode code, Supplier<Optional<String>> search, Object... parts) {
        if (full()) {
            return;
        }
        Optional<String> near = search.get();
        String question = near.map(n -> " " + Messages.text(Phrase.DID_YOU_MEAN, Say.quoted(n)))
                .orElse("");
        all.add(new Problem(span, code, Messages.text(code, parts) + question, near));
    }

    private boolean full() {
        return all.size() >= MOST;
    }

    boolean isEmpty() {
        return all.isEmpty();
    }

    /** True if something was found wrong between two places. */
    boolean within(int from, int to) {
        return all.stream().anyMatch(p -> p.span().from() >= from && p.span().to() <= to);
    }

    List<Problem> inOrder() {
        List<Problem> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparingInt(p -> p.span().from()));
        return sorted;
    }
}
