package farwatt.command;

import farwatt.intake.ColumnMeaning;
import farwatt.intake.Difference;
import farwatt.intake.Outcome;
import farwatt.intake.ReportLine;
import farwatt.intake.RowState;
import farwatt.intake.Taken;
import farwatt.intake.Understood;
import farwatt.report.Cancel;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import farwatt.workbook.Column;
import farwatt.workbook.Entry;
import farwatt.workbook.Form;
import farwatt.workbook.Imprint;
import farwatt.workbook.Paper;
import farwatt.workbook.Schedule;
import farwatt.workbook.Tone;
import farwatt.workbook.Workbook;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What was understood of a list as a workbook: its rows as they stood there, what became of each, and why. */
final class IntakeBook {
    private final String list;
    private final Outcome outcome;
    private final Optional<Taken> taken;

    /**
     * @param list what the list is called
     * @param taken what taking it in does to a plan; empty where no plan was named
     */
    IntakeBook(String list, Outcome outcome, Optional<Taken> taken) {
        this.list = list;
        this.outcome = outcome;
        this.taken = taken;
    }

    void write(Path target, LocalDate today) throws Refusal {
        List<Schedule> tables = new ArrayList<>(List.of(rows(), values(), columns(), questions()));
        if (!outcome.totals().isEmpty()) {
            tables.add(totals());
        }
        taken.ifPresent(t -> tables.add(differences(t)));
        Imprint imprint = new Imprint(list, Version.number(), Optional.empty(), today, Paper.A4);
        Workbook.write(target, tables, imprint, Progress.SILENT, new Cancel());
    }

    private static Schedule table(String name, String note, List<Column> columns, List<List<Entry>> lines) {
        return new Schedule(name, note, columns, Schedule.Lines.of(lines));
    }

    private static Column word(String heading) {
        return Column.of(heading, heading, Form.WORD);
    }

    private static Column sentence(String heading) {
        return Column.of(heading, heading, Form.SENTENCE);
    }

    private Schedule rows() {
        Set<String> headings = new LinkedHashSet<>();
        outcome.report().forEach(line -> headings.addAll(line.original().keySet()));
        List<Column> columns = new ArrayList<>(List.of(word("place"), word("state"), sentence("said"), word("made")));
        int at = 0;
        for (String heading : headings) {
            columns.add(Column.of("listed" + at++, heading, Form.WORD));
        }
        List<List<Entry>> lines = new ArrayList<>();
        for (ReportLine line : outcome.report()) {
            List<Entry> entries = new ArrayList<>(List.of(
                    Entry.words(line.place()),
                    Entry.words(line.state().word()).in(tone(line.state())),
                    Entry.words(line.said()),
                    Entry.words(String.join(", ", line.made()))));
            Map<String, String> original = line.original();
            headings.forEach(heading -> entries.add(Entry.words(original.getOrDefault(heading, ""))));
            lines.add(entries);
        }
        return table("Rows", IntakeOut.counts(outcome) + ".", columns, lines);
    }

    private static Tone tone(RowState state) {
        return switch (state) {
            case TAKEN -> Tone.GOOD;
            case CHANGED -> Tone.POOR;
            case HELD_BACK -> Tone.BAD;
            case LEFT_OUT -> Tone.QUIET;
        };
    }

    private Schedule values() {
        List<List<Entry>> lines = new ArrayList<>();
        for (ReportLine line : outcome.report()) {
            for (Understood value : line.understood()) {
                lines.add(words(
                        line.place(),
                        value.name(),
                        value.text(),
                        value.source().name().toLowerCase(Locale.ROOT),
                        value.original()));
            }
        }
        List<Column> columns =
                List.of(word("place"), word("name"), word("understood"), word("from"), word("as it stood"));
        return table("Values", "Every value that was understood, with what stands in the list.", columns, lines);
    }

    private Schedule columns() {
        List<List<Entry>> lines = new ArrayList<>();
        for (ColumnMeaning column : outcome.columns()) {
            List<Entry> entries = new ArrayList<>(words(
                    column.heading(), column.meaning().word(), column.reason(), column.ownName(), column.sheet()));
            entries.add(2, Entry.number(column.confidence()));
            lines.add(entries);
        }
        List<Column> columns = List.of(
                word("heading"),
                word("understood as"),
                Column.of("sure", "how sure", Form.SHARE),
                sentence("because"),
                word("own column"),
                word("sheet"));
        return table("Columns", "What each column of the list was taken to mean.", columns, lines);
    }

    private Schedule questions() {
        List<List<Entry>> lines = new ArrayList<>();
        outcome.notices().forEach(notice -> lines.add(words(notice.text(), "", "")));
        outcome.questions().forEach(q -> lines.add(words(q.text(), q.used(), q.key())));
        taken.ifPresent(t -> t.questions().forEach(q -> lines.add(words(q.text(), q.used(), q.key()))));
        List<Column> columns = List.of(
                Column.of("text", "what is to be known or decided", Form.PARAGRAPH), word("used"), word("question"));
        return table("Questions", "What was used until someone decides otherwise.", columns, lines);
    }

    private Schedule totals() {
        List<List<Entry>> lines = new ArrayList<>();
        outcome.totals().forEach(t -> {
            Entry agrees = Entry.words(t.agrees() ? "agrees" : "differs").in(t.agrees() ? Tone.GOOD : Tone.BAD);
            List<Entry> entries = new ArrayList<>(words(t.place(), t.heading(), t.stated(), t.found()));
            entries.add(agrees);
            lines.add(entries);
        });
        List<Column> columns =
                List.of(word("place"), word("column"), word("the list says"), word("its rows give"), word("check"));
        return table("Totals", "Totals of the list held against its rows.", columns, lines);
    }

    private static Schedule differences(Taken taken) {
        List<List<Entry>> lines = new ArrayList<>();
        taken.added().forEach(id -> lines.add(words("added", id, "", "", "")));
        for (Difference d : taken.differences()) {
            lines.add(words("differs", d.id(), d.name(), d.before(), d.after()));
        }
        taken.gone().forEach(id -> lines.add(words("not in the list", id, "", "", "")));
        List<Column> columns =
                List.of(word("what"), word("row"), word("name"), word("in the plan"), word("in the list"));
        return table("Against the plan", "What the list adds to the plan and says otherwise.", columns, lines);
    }

    private static List<Entry> words(String... texts) {
        List<Entry> entries = new ArrayList<>();
        for (String text : texts) {
            entries.add(Entry.words(text));
        }
        return entries;
    }
}
