package farwatt.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What one row is becoming while it is read. Used by one thread, then read only. */
final class Draft {
    private final Map<String, String> device = new LinkedHashMap<>();
    private final Map<String, String> run = new LinkedHashMap<>();
    private final List<Remark> remarks = new ArrayList<>(2);
    private final List<Understood> understood = new ArrayList<>(2);
    private List<Remark> settled = List.of();
    private String name = "";
    private String zone = "";
    private int count = 1;
    private final Map<String, String> readings = new LinkedHashMap<>();
    private boolean part;
    private boolean node;
    private List<String> ports = List.of();
    private final Map<String, List<String>> each = new LinkedHashMap<>();

    void device(String key, String text) {
        device.put(key, text);
    }

    void run(String key, String text) {
        run.put(key, text);
    }

    void say(Remark remark) {
        remarks.add(remark);
    }

    void say(List<Remark> some) {
        remarks.addAll(some);
    }

    void understood(Understood value) {
        understood.add(value);
    }

    void name(String text) {
        name = text;
    }

    void zone(String text) {
        zone = text;
    }

    /** A cell that belongs to one device alone: the texts for the devices of the row, in their order. */
    void each(String key, List<String> texts) {
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
        readings.put(key, text);
    }

    Map<String, String> readings() {
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
        settled = List.copyOf(remarks);
    }

    /** Takes back what was said because of other rows. */
    void unsettle() {
        remarks.clear();
        remarks.addAll(settled);
    }

    /** Takes back everything said: the row stands for no device. */
    void insteadOut(Remark why) {
        remarks.clear();
        remarks.add(why);
    }

    void count(int devices) {
        count = devices;
    }

    boolean hasDevice(String key) {
        return device.containsKey(key);
    }

    Map<String, String> device() {
        return device;
    }

    Map<String, String> run() {
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
