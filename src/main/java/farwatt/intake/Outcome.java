package farwatt.intake;

import farwatt.plan.Row;
import farwatt.report.Notice;
import java.util.List;

/**
 * A customer's list understood. Nothing is in a plan yet. Immutable.
 *
 * @param devices rows as typed into a plan
 * @param runs one for every device that came with a distance or a feeding switch; {@code from} is as the list has it
 * @param switches edge switches that a list of ports describes
 * @param readings what was measured on runs; the id is what the list calls the run, or the device at its end
 * @param zones places that the devices name
 * @param ownColumns columns for what a plan has no name for
 * @param held devices of rows held back, not in use, with the reason in their note; for those who want to keep them
 * @param columns what each column was taken to mean
 * @param report a line a row
 * @param questions what a person should decide
 * @param totals totals of the list held against its rows
 * @param notices about the list as a whole
 * @param mapping what was laid down for reading it
 */
public record Outcome(
        List<Row> devices,
        List<Row> runs,
        List<Row> switches,
        List<Row> readings,
        List<Row> zones,
        List<Row> ownColumns,
        List<Row> held,
        List<ColumnMeaning> columns,
        List<ReportLine> report,
        List<Question> questions,
        List<TotalsCheck> totals,
        List<Notice> notices,
        Mapping mapping) {
    public Outcome {
        devices = List.copyOf(devices);
        runs = List.copyOf(runs);
        switches = List.copyOf(switches);
        readings = List.copyOf(readings);
        zones = List.copyOf(zones);
        ownColumns = List.copyOf(ownColumns);
        held = List.copyOf(held);
        columns = List.copyOf(columns);
        report = List.copyOf(report);
        questions = List.copyOf(questions);
        totals = List.copyOf(totals);
        notices = List.copyOf(notices);
    }

    /** Rows with something in them. */
    public int rows() {
        return report.size();
    }

    /** How many rows ended in a state. */
    public int count(RowState state) {
        int count = 0;
        for (ReportLine line : report) {
            count += line.state() == state ? 1 : 0;
        }
        return count;
    }

    /** The columns' meanings as a mapping to keep for the next list. */
    public Mapping mappingUsed() {
        Mapping kept = mapping;
        for (ColumnMeaning column : columns) {
            if (!column.heading().isEmpty()) {
                kept = kept.withColumn(column.heading(), column.meaning());
            }
        }
        return kept;
    }
}
