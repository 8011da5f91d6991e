package farwatt.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What one row is becoming while it is read. Used by one thread, then read only. */
final class Draft {
    private static final Texts NO_READINGS = new Texts();

    private final Texts device = new Texts();
    private final Texts run = new Texts();
    private List<Remark> remarks = List.of();
    private List<Understood> understood = List.of();
    private List<Remark> settled = List.of();
    private String name = "";
    private String zone = "";
    private int count = 1;
    private Texts readings = NO_READINGS;
    private boolean part;
    private boolean node;
    private List<String> ports = List.of();
    private Map<String, List<String>> each = Map.of();

    void device(String key, String text) {
        device.put(key, text);
    }

    void run(String key, String text) {
        run.put(key, text);
    }

    void say(Remark remark) {
        say(List.of(remark));
    }

    void say(List<Remark> some) {
        remarks = joined(remarks, some);
    }

    void understood(Understood value) {
        understood = joined(understood, List.of(value));
    }

    /** Of most rows nothing or one thing is said: no list of its own for that. */
    private static <T> List<T> joined(List<T> some, List<T> more) {
        if (some.isEmpty() || more.isEmpty()) {
            return List.copyOf(some.isEmpty() ? more : some);
        }
        List<T> all = new ArrayList<>(some);
        all.addAll(more);
        return List.copyOf(all);
    }

    /** Takes over what another draft says of device, run and watts. */
    void add(Draft part) {
        device.putAll(part.device);
        run.putAll(part.run);
        say(part.remarks);
        understood = joined(understood, part.understood);
    }

    void name(String text) {
        name = text;
    }

    void zone(String text) {
        zone = text;
    }

    /** A cell that belongs to one device alone: the texts for the devices of the row, in their order. */
    void each(String key, List<String> texts) {
        each = each.isEmpty() ? new LinkedHashMap<>() : each;
        each.put(key, List.copyOf(texts));
    }

    Map<String, List<String>> each() {
        return each;
    }

    /** Ports for the devices of the row, in their order. */
    void ports(List<String> numbers) {
        ports = List.copyOf(numbers);
    }

    List<String> ports() {
        return ports;
    }

    /** The row feeds others: a switch is made of it, no device. */
    void node() {
        node = true;
    }

    boolean isNode() {
        return node;
    }

    /** Something measured on the run that the row names. */
    void reading(String key, String text) {
        readings = readings.isEmpty() ? new Texts() : readings;
        readings.put(key, text);
    }

    Texts readings() {
        return readings;
    }

    /** The row is a part of something else, such as one port of a switch: no device is made of it. */
    void part() {
        part = true;
    }

    boolean isPart() {
        return part;
    }

    /** What was said so far is what the row itself says; what comes later depends on other rows. */
    void settle() {
        settled = remarks;
        device.trim();
        run.trim();
    }

    /** Takes back what was said because of other rows. */
    void unsettle() {
        remarks = settled;
    }

    /** Takes back everything said: the row stands for no device. */
    void insteadOut(Remark why) {
        remarks = List.of(why);
    }

    void count(int devices) {
        count = devices;
    }

    Texts device() {
        return device;
    }

    Texts run() {
        return run;
    }

    List<Remark> remarks() {
        return remarks;
    }

    List<Understood> understood() {
        return understood;
    }

    String name() {
        return name;
    }

    String zone() {
        return zone;
    }

    int count() {
        return count;
    }

    /** The heaviest of what was said. */
    Remark.Weight weight() {
        Remark.Weight most = Remark.Weight.FLAG;
        for (Remark remark : remarks) {
            if (remark.weight().compareTo(most) > 0) {
                most = remark.weight();
            }
        }
        return most;
    }
}
