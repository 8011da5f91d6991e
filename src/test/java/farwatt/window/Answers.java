package farwatt.window;

import farwatt.window.frame.Asking;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Answers what the window asks, in the order in which a test prepared it; what was not prepared is left unanswered. */
public final class Answers implements Asking {
    public final Deque<Path> files = new ArrayDeque<>();
    public final Deque<String> texts = new ArrayDeque<>();
    public final Deque<List<Integer>> picks = new ArrayDeque<>();
    public final List<Offer> offered = new ArrayList<>();
    public final List<String> asked = new ArrayList<>();

    @Override
    public Optional<Path> open(String title, List<String> endings) {
        asked.add(title);
        return Optional.ofNullable(files.poll());
    }

    @Override
    public Optional<Path> save(String title, String suggested, List<String> endings) {
        asked.add(title + ": " + suggested);
        return Optional.ofNullable(files.poll());
    }

    @Override
    public Optional<String> text(String title, String question, String suggested) {
        asked.add(question);
        return Optional.ofNullable(texts.poll());
    }

    @Override
    public Optional<String> choose(String title, String question, List<String> ways) {
        asked.add(question);
        return Optional.ofNullable(texts.poll());
    }

    @Override
    public Optional<List<Integer>> pick(String title, String question, List<Offer> offers) {
        asked.add(question);
        offered.clear();
        offered.addAll(offers);
        return Optional.ofNullable(picks.poll());
    }
}
