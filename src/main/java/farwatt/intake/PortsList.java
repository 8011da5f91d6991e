package farwatt.intake;

import farwatt.plan.Cell;
import farwatt.plan.Row;
import farwatt.report.Messages;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A list of ports rather than of devices: several rows name the same box, each one of its ports. A port that takes power
 * in makes the box a switch that lives off a cable, never a source.
 */
final class PortsList {
    private static final Pattern IN =
            Pattern.compile("(?i).*\\b(?:pd|in|input|uplink|eingang|entrée|entrada|ingresso)\\b.*");
    private static final Pattern OUT =
            Pattern.compile("(?i).*\\b(?:pse|out|output|downlink|ausgang|sortie|salida|uscita)\\b.*");
    private static final Pattern POWERED = Pattern.compile("(?i).*\\b(?:poe|802[.,]3)\\b.*");

    /** What a port does. */
    private enum Way {
        IN,
        OUT,
        UNKNOWN
    }

    private final Listing listing;
    private final List<Row> switches = new ArrayList<>();
    private final List<Question> questions = new ArrayList<>();

    private PortsList(Listing listing) {
        this.listing = listing;
    }

    /** The reader of a list of ports; empty when the list is one of devices. */
    static Optional<PortsList> of(Listing listing, List<Sorted> rows) {
        boolean columns = listing.has(Meaning.NAME)
                && listing.has(Meaning.PORT)
                && !listing.has(Meaning.WATTS, Meaning.LENGTH, Meaning.QUANTITY, Meaning.FEEDER, Meaning.CURRENT);
        if (!columns) {
            return Optional.empty();
        }
        PortsList ports = new PortsList(listing);
        int devices = 0;
        int known = 0;
        int in = 0;
        Map<String, Integer> boxes = new LinkedHashMap<>();
        for (Sorted row : rows) {
            if (row.kind() == Sorted.Kind.DEVICE) {
                devices++;
                Way way = ports.way(row.row());
                known += way == Way.UNKNOWN ? 0 : 1;
                in += way == Way.IN ? 1 : 0;
                boxes.merge(Spelling.fold(ports.name(row.row())), 1, Integer::sum);
            }
        }
        boolean several = boxes.values().stream().anyMatch(n -> n > 1);
        return several && in > 0 && known * 5 >= devices * 4 ? Optional.of(ports) : Optional.empty();
    }

    private String name(RawRow row) {
        return listing.text(row, Meaning.NAME);
    }

    private String label(RawRow row) {
        return listing.text(row, Meaning.PORT);
    }

    /** By its column if there is one, else by the words of its label: in a label a powered port without "in" gives. */
    private Way way(RawRow row) {
        if (listing.has(Meaning.DIRECTION)) {
            return way(listing.text(row, Meaning.DIRECTION), Way.UNKNOWN);
        }
        boolean powered = POWERED.matcher(label(row)).matches();
        return way(label(row), powered ? Way.OUT : Way.UNKNOWN);
    }

    private static Way way(String text, Way otherwise) {
        if (IN.matcher(text).matches()) {
            return Way.IN;
        }
        return OUT.matcher(text).matches() ? Way.OUT : otherwise;
    }

    private ClassWord type(RawRow row) {
        return ClassWord.read(listing.has(Meaning.CLASS) ? listing.text(row, Meaning.CLASS) : label(row));
    }

    /** Reads the rows: a switch for every box, its ports counted; rows by their place → what became of them. */
    Map<Integer, Draft> read(List<Sorted> rows) {
        Map<String, List<RawRow>> boxes = new LinkedHashMap<>();
        for (Sorted row : rows) {
            if (row.kind() == Sorted.Kind.DEVICE) {
                boxes.computeIfAbsent(name(row.row()), n -> new ArrayList<>()).add(row.row());
            }
        }
        Map<Integer, Draft> drafts = new LinkedHashMap<>();
        boxes.forEach((name, ports) -> box(name, ports, drafts));
        return drafts;
    }

    private void box(String name, List<RawRow> ports, Map<Integer, Draft> drafts) {
        List<RawRow> in = ports.stream().filter(r -> way(r) == Way.IN).toList();
        List<RawRow> out = ports.stream().filter(r -> way(r) == Way.OUT).toList();
        boolean sound = in.size() == 1 && in.size() + out.size() == ports.size() && !name.isEmpty() && !out.isEmpty();
        boolean stated = listing.has(Meaning.DIRECTION);
        String key = "ports:" + name;
        boolean confirmed = stated || listing.answers().answer(key, "").equals("take");
        if (sound && !stated) {
            String text = Messages.text(IntakeSays.ASK_PORTS, name, out.size());
            questions.add(new Question(key, text, List.of("hold", "take"), confirmed ? "take" : "hold"));
        }
        if (sound && confirmed) {
            switches.add(node(name, in.get(0), out));
        }
        for (RawRow row : ports) {
            Draft draft = new Draft();
            draft.name(name);
            draft.part();
            draft.say(said(row, name, out.size(), sound, confirmed));
            drafts.put(row.number(), draft);
        }
    }

    private Remark said(RawRow row, String name, int out, boolean sound, boolean confirmed) {
        if (!sound) {
            return Remark.hold(IntakeSays.PORTS_UNSOUND, name);
        }
        boolean in = way(row) == Way.IN;
        if (!confirmed) {
            return Remark.hold(in ? IntakeSays.PORT_IN_LABEL : IntakeSays.PORT_OUT_LABEL, name);
        }
        return in ? Remark.change(IntakeSays.PORT_IN, name) : Remark.change(IntakeSays.PORT_OUT, name, out);
    }

    private Row node(String name, RawRow in, List<RawRow> out) {
        Row row = Row.of(name);
        int type = 0;
        for (RawRow port : out) {
            ClassWord word = type(port);
            boolean typed = word.sort() == ClassWord.Sort.TYPE || word.sort() == ClassWord.Sort.TYPE_OPEN;
            type = typed ? Math.max(type, word.number()) : type;
        }
        if (type > 0) {
            row = row.with("type", Cell.number(String.valueOf(type)));
        }
        row = row.with("ports", Cell.number(String.valueOf(out.size())));
        ClassWord uplink = type(in);
        return uplink.hasRight() ? row.with("uplink_class", Cell.number(String.valueOf(uplink.topClass()))) : row;
    }

    List<Row> switches() {
        return switches;
    }

    List<Question> questions() {
        return questions;
    }
}
