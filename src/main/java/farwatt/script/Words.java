package farwatt.script;

import farwatt.language.Near;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The words of scripts with a sentence and an example each: for completion, help and near names. Any thread. */
public final class Words {
    /**
     * One word.
     *
     * @param name as typed, such as {@code plan.set}
     * @param call how it is called
     * @param sentence what it does
     * @param example a line that runs on a plan with these names
     */
    public record Word(String name, String call, String sentence, String example) {}

    private static final List<Word> ALL = List.of(
            new Word(
                    "plan.get",
                    "plan.get(expression, otherwise)",
                    "The value of an expression: a number in SI, a text, true or false.",
                    "plan.get('gate.reserve_share')"),
            new Word(
                    "plan.text",
                    "plan.text(expression)",
                    "The value of an expression as people read it, with its unit.",
                    "plan.text('trunk.loss')"),
            new Word(
                    "plan.explain",
                    "plan.explain(expression)",
                    "How a value came about, down to what was typed.",
                    "plan.explain('gate.available').show()"),
            new Word(
                    "plan.set",
                    "plan.set(path, value)",
                    "Fills a cell, a value or a setting of the copy that the script works on.",
                    "plan.set('trunk.gauge', '23 AWG')"),
            new Word(
                    "plan.add",
                    "plan.add(table, row, run)",
                    "Adds a row, and the run that feeds it where one is given.",
                    "plan.add('devices', {id: 'cam 9', class: 3, zone: 'quay'}, {from: 'gate', length: '30 m'})"),
            new Word("plan.drop", "plan.drop(id)", "Takes a row away, a node with its runs.", "plan.drop('cam 4')"),
            new Word(
                    "plan.rows",
                    "plan.rows(table)",
                    "The rows of a table with the value of every name; none is null.",
                    "plan.rows('devices').map((device) => device.id)"),
            new Word(
                    "plan.scenario",
                    "plan.scenario(id)",
                    "Another copy, with a scenario of the plan applied.",
                    "plan.scenario('winter night').text('gate.reserve_share')"),
            new Word(
                    "plan.findings",
                    "plan.findings({level})",
                    "What the review found over all corners, of one level where one is given; with remedies where it fails.",
                    "plan.findings({level: 'fail'}).map((finding) => finding.remedies.map((remedy) => remedy.text))"),
            new Word(
                    "plan.verdict",
                    "plan.verdict()",
                    "Whether the plan holds, and what decides.",
                    "plan.verdict().text"),
            new Word(
                    "print",
                    "print(value, …)",
                    "Prints values on one line.",
                    "print('reserve', plan.text('gate.reserve_share'))"),
            new Word(
                    "table",
                    "table(rows, units)",
                    "A table of a list of objects, to show or to save; units by column where numbers have one.",
                    "table(plan.rows('runs').map(({id, loss}) => ({id, loss})), {loss: 'W'}).show()"),
            new Word(
                    "span",
                    "span(from, to, step)",
                    "Evenly spaced values for a sweep.",
                    "span('-20 degC', '60 degC', '5 K')"),
            new Word(
                    "sweep",
                    "sweep({over, read})",
                    "Works out what is to be read for every combination of values.",
                    "sweep({over: {'trunk.gauge': ['22 AWG', '24 AWG']}, read: ['gate.reserve_share']}).show()"),
            new Word(
                    "grow",
                    "grow({copy, until, most})",
                    "Adds copies of a device with their runs until something holds.",
                    "grow({copy: 'cam 1', until: 'gate.reserve_share < reserve_target', most: 50}).fitted"),
            new Word(
                    "limit",
                    "limit({vary, holds})",
                    "The farthest value for which something holds.",
                    "limit({vary: {'trunk.length': ['1 m', '300 m']}, holds: 'every(powered of devices)'}).show()"),
            new Word(
                    "spread",
                    "spread({vary, runs, read, seed})",
                    "How much results scatter when inputs do.",
                    "spread({vary: {'trunk.length': '95 m ± 5 %'}, runs: 1000, read: ['gate.reserve_share']}).show()"),
            new Word(
                    "sensitivity",
                    "sensitivity({read, step})",
                    "Each input a step up and down, ordered by effect.",
                    "sensitivity({read: 'gate.reserve_share', step: '5 %'}).show()"),
            new Word("room", "room()", "For each node, how many more of which kind fit.", "room().show()"),
            new Word(
                    "keep",
                    "keep(name)",
                    "Offers what was changed so far as a scenario of the plan.",
                    "plan.set('trunk.gauge', '24 AWG'); keep('thin trunk')"),
            new Word(
                    "apply",
                    "apply()",
                    "Offers what was changed so far for the plan itself, as one step.",
                    "plan.set('dark', true); apply()"),
            new Word("args", "args", "The words after the script on the command line.", "args.length"));

    private Words() {}

    public static List<Word> all() {
        return ALL;
    }

    /** The word of that name. */
    public static Optional<Word> find(String name) {
        return ALL.stream().filter(word -> word.name().equals(name)).findFirst();
    }

    /** The word of that name or a near one. */
    public static Optional<Word> near(String name) {
        return Near.best(name, ALL.stream().map(Word::name).toList()).flatMap(Words::find);
    }

    /** The words that go on from what stands before the cursor. */
    public static List<Word> complete(String before) {
        int from = before.length();
        while (from > 0 && (Character.isLetterOrDigit(before.charAt(from - 1)) || before.charAt(from - 1) == '.')) {
            from--;
        }
        String start = before.substring(from);
        return ALL.stream().filter(word -> word.name().startsWith(start)).toList();
    }

    /** The names that are known without a dot. */
    static List<String> globals() {
        List<String> names = new ArrayList<>(List.of("plan"));
        ALL.stream().map(Word::name).filter(name -> name.indexOf('.') < 0).forEach(names::add);
        return names;
    }
}
