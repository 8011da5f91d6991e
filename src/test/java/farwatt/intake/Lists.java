package farwatt.intake;

import farwatt.plan.Row;
import farwatt.report.Cancel;
import farwatt.report.Refusal;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;

/** Reads the lists that stand in the test resources. */
final class Lists {
    private Lists() {}

    static Path file(String name) {
        try {
            return Path.of(Lists.class.getResource("/intake/" + name).toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    static Outcome read(String name) throws IOException, Refusal {
        return read(name, Wishes.NONE);
    }

    static Outcome read(String name, Wishes wishes) throws IOException, Refusal {
        return adding(Intake.read(file(name), wishes, new Cancel()));
    }

    static Outcome paste(String text) throws Refusal {
        return paste(text, Wishes.NONE);
    }

    static Outcome paste(String text, Wishes wishes) throws Refusal {
        return adding(Intake.paste(text, wishes, new Cancel()));
    }

    /** Whatever a test looks at, the four counts add up to the rows. */
    private static Outcome adding(Outcome outcome) {
        int sum = 0;
        for (RowState state : RowState.values()) {
            sum += outcome.count(state);
        }
        if (sum != outcome.rows()) {
            throw new AssertionError(sum + " of " + outcome.rows());
        }
        return outcome;
    }

    static List<String> ids(List<Row> rows) {
        return rows.stream().map(Row::id).toList();
    }

    static List<String> cells(List<Row> rows, String name) {
        return rows.stream().map(row -> row.text(name)).toList();
    }

    static ReportLine line(Outcome outcome, String place) {
        return outcome.report().stream()
                .filter(line -> line.place().equals(place))
                .findFirst()
                .orElseThrow();
    }

    static List<RowState> states(Outcome outcome) {
        return outcome.report().stream().map(ReportLine::state).toList();
    }

    /** Watts of all devices, from a cell such as "6.5 W" or from the class. */
    static double watts(List<Row> devices) {
        return devices.stream()
                .mapToDouble(row -> Double.parseDouble(row.text("draw").replace(" W", "")))
                .sum();
    }
}
