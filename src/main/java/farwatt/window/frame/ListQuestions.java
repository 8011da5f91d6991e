package farwatt.window.frame;

import farwatt.window.list.ListAsking;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What taking in a list asks, by the window's own way of asking. */
record ListQuestions(Asking asking) implements ListAsking {
    private static final List<String> ENDINGS = List.of(".json");

    @Override
    public Optional<Path> mapping() {
        return asking.open("Use a kept mapping", ENDINGS);
    }

    @Override
    public Optional<Path> place(String suggested) {
        return asking.save("Keep the mapping", suggested, ENDINGS);
    }

    @Override
    public Optional<String> name(String suggested) {
        return asking.text(
                "Keep the mapping", "Under which name shall the plan keep how this list was read?", suggested);
    }
}
