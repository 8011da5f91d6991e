package farwatt.intake;

import farwatt.plan.Change;
import farwatt.plan.Plan;
import farwatt.plan.Row;
import farwatt.plan.Rows;
import farwatt.plan.Table;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Places a list's runs in a plan: the feeding switch by its name, the run that feeds a known device brought up to date. */
final class TakeInRuns {
    private static final String OPEN = "leave open";
    private static final Map<String, Table> NEW =
            Map.of("new edge switch", Table.SWITCHES, "new source", Table.SOURCES);

    private final Plan plan;
    private final Names names;
    private final Map<String, String> devices;
    private final Mapping answers;
    /** Nodes that can feed, by their name without blanks and marks. */
    private final Map<String, String> feeders = new HashMap<>();

    private final Map<String, Row> runTo = new HashMap<>();
    private final Map<String, Integer> unknown = new LinkedHashMap<>();
    private final List<String> choices = new ArrayList<>();

    TakeInRuns(Plan plan, Names names, Map<String, String> devices, Outcome outcome) {
        this.plan = plan;
        this.names = names;
        this.devices = devices;
        this.answers = outcome.mapping();
        choices.add(OPEN);
        NEW.keySet().stream().sorted().forEach(choices::add);
        for (Table table : List.of(Table.SOURCES, Table.SWITCHES)) {
            for (Row row : plan.rows(table)) {
                feeders.putIfAbsent(Feeders.bare(row.id()), row.id());
                choices.add(row.id());
            }
        }
        for (Row row : outcome.switches()) {
            feeders.put(Feeders.bare(row.id()), devices.getOrDefault(Rows.fold(row.id()), row.id()));
        }
        for (Row run : plan.rows(Table.RUNS)) {
            runTo.putIfAbsent(Rows.fold(run.text("to")), run);
        }
    }

    /** The changes that put a run in, with what feeds it where that is to be made. */
    List<Change> place(Row listed) {
        List<Change> made = new ArrayList<>();
        made.addAll(begun(listed.text("from")));
        made.addAll(placed(listed));
        return made;
    }

    /** The switch or source that is to be made for a name that the plan does not have. */
    private List<Change> begun(String typed) {
        Optional<Table> table = Optional.ofNullable(NEW.get(answer(typed)));
        String bare = Feeders.bare(typed);
        if (table.isEmpty() || feeders.containsKey(bare)) {
            return List.of();
        }
        String id = names.apart(typed, "feeds");
        feeders.put(bare, id);
        return List.of(new Change.AddRow(table.get(), 0, Row.of(id)));
    }

    private List<Change> placed(Row listed) {
        String to = devices.getOrDefault(Rows.fold(listed.text("to")), listed.text("to"));
        Row run = listed.with("to", to);
        String from = listed.text("from");
        if (!from.isEmpty()) {
            Optional<String> feeder = feeder(from);
            run = feeder.isPresent() ? run.with("from", feeder.get()) : run.without("from");
            if (feeder.isEmpty() || !answer(from).isEmpty()) {
                unknown.merge(from, 1, Integer::sum);
            }
        }
        Row there = runTo.get(Rows.fold(to));
        if (there != null) {
            return TakeIn.differences(Table.RUNS, there, run);
        }
        return List.of(new Change.AddRow(Table.RUNS, 0, run.renamed(names.apart("run " + to, ""))));
    }

    private String answer(String typed) {
        return answers.answer("feeder:" + typed, "");
    }

    /** The switch or source of a name, spelled with or without blanks and marks; or the one a person named instead. */
    private Optional<String> feeder(String typed) {
        String answer = answer(typed);
        String wanted = answer.isEmpty() || NEW.containsKey(answer) ? typed : answer;
        Optional<Plan.Spot> spot =
                plan.find(wanted).filter(s -> s.table() == Table.SOURCES || s.table() == Table.SWITCHES);
        if (spot.isPresent()) {
            return Optional.of(
                    plan.rows(spot.get().table()).at(spot.get().place()).id());
        }
        return Optional.ofNullable(feeders.get(Feeders.bare(wanted)));
    }

    /** One question for every feeding switch that the plan does not have by this name. */
    List<Question> questions() {
        List<Question> questions = new ArrayList<>();
        unknown.forEach((name, count) -> {
            String used = answer(name).isEmpty() ? OPEN : answer(name);
            String text = Messages.text(IntakeSays.ASK_FEEDER, name, count);
            questions.add(new Question("feeder:" + name, text, choices, used));
        });
        return questions;
    }

    List<Notice> notices() {
        List<Notice> notices = new ArrayList<>();
        unknown.forEach((name, count) -> {
            if (feeder(name).isEmpty()) {
                notices.add(Notice.of(Level.WARN, IntakeSays.NO_FEEDER, Place.NONE, name, count));
            }
        });
        return notices;
    }
}
