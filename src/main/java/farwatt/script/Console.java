package farwatt.script;

import farwatt.plan.Scenario;
import farwatt.quantity.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Where a script's words go: to the program as messages, within limits. */
final class Console {
    /** Sends one message. */
    @FunctionalInterface
    interface Sender {
        void send(Line line);
    }

    /** Parts of a picture's message before the count of varied columns. */
    private static final int FIXED = 4;

    private static final long NANOS_BETWEEN = 100_000_000L;

    private final Sender sender;
    private final long most;
    private long printed;
    private long lastProgress;

    Console(Sender sender, long most) {
        this.sender = sender;
        this.most = most;
    }

    /** Counts from nothing again, for the next line at the console. */
    void again() {
        printed = 0;
    }

    void print(String text) {
        count(text.length() + 1L);
        sender.send(Line.of("print", text));
    }

    void table(ResultTable table) {
        send("table", List.of(), table);
    }

    void save(String name, ResultTable table) {
        send("save", List.of(ResultFiles.checked(name)), table);
    }

    void picture(ResultPicture picture) {
        String file = picture.file().map(ResultFiles::checkedPicture).orElse("");
        String now = picture.now().isPresent() ? Double.toString(picture.now().getAsDouble()) : "";
        List<String> before = new ArrayList<>(List.of(picture.column(), file, picture.read(), now));
        before.add(Integer.toString(picture.varied().size()));
        before.addAll(picture.varied());
        send("picture", before, picture.table());
    }

    /** Reads the message that {@link #picture} sends. */
    static ResultPicture picture(Line line, Units units) {
        OptionalDouble now =
                line.part(3).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(line.part(3)));
        int varied = Integer.parseInt(line.part(FIXED));
        Optional<String> file = Optional.of(line.part(1)).filter(name -> !name.isEmpty());
        int from = FIXED + 1 + varied;
        List<String> names = line.parts().subList(FIXED + 1, from);
        return new ResultPicture(table(line, from, units), line.part(0), names, line.part(2), now, file);
    }

    void keep(Scenario scenario) {
        sender.send(Line.of("keep", Changes.text(scenario)));
    }

    void propose(Scenario scenario) {
        sender.send(Line.of("propose", Changes.text(scenario)));
    }

    /** Told at most ten times a second. */
    void progress(double share, String what) {
        long now = System.nanoTime();
        if (lastProgress == 0 || now - lastProgress > NANOS_BETWEEN) {
            lastProgress = now;
            sender.send(Line.of("progress", Double.toString(share), what));
        }
    }

    private void send(String kind, List<String> before, ResultTable table) {
        List<String> parts = new ArrayList<>(before);
        parts.addAll(TableLine.parts(table));
        count(parts.stream().mapToLong(part -> part.length() + 1L).sum());
        sender.send(new Line(kind, parts));
    }

    private void count(long more) {
        printed += more;
        if (printed > most) {
            throw ScriptFailure.of(ScriptCode.TOO_MUCH_PRINTED, most);
        }
    }

    /** Reads tables of messages in a plan's currency. */
    static ResultTable table(Line line, int from, Units units) {
        return TableLine.table(line.parts().subList(from, line.parts().size()), units);
    }
}
