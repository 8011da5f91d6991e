package farwatt.script;

import farwatt.plan.Cell;
import farwatt.plan.Row;
import farwatt.plan.Step;
import farwatt.report.Level;
import farwatt.review.Finding;
import farwatt.review.Remedies;
import farwatt.review.Remedy;
import farwatt.review.Review;

/** Findings as data of a script, each with the changes that mend it. */
final class Found {
    private final JsonText json = new JsonText();

    private Found() {}

    /** Those of one level, all where it is "". */
    static String json(Review review, String level) {
        Found found = new Found();
        found.json.open('[');
        for (Finding finding : review.findings()) {
            if (level.isEmpty() || finding.level().word().equals(level)) {
                found.finding(finding);
            }
        }
        return found.json.close(']').toString();
    }

    /** True where findings of a level may have {@link Remedies}. */
    static boolean hasRemedies(String level) {
        return level.isEmpty() || level.equals(Level.FAIL.word());
    }

    private void finding(Finding finding) {
        json.open('{')
                .text("code", finding.code())
                .text("level", finding.level().word())
                .text("corner", finding.corner().map(c -> c.word()).orElse(""))
                .text("table", finding.place().table())
                .text("row", finding.place().row())
                .text("name", finding.place().name())
                .number("value", finding.value())
                .number("limit", finding.limit())
                .text("text", finding.text())
                .key("remedies")
                .open('[');
        finding.remedies().forEach(this::remedy);
        json.close(']').text("nearest", finding.nearest()).close('}');
    }

    private void remedy(Remedy remedy) {
        json.open('{').text("text", remedy.text()).key("changes").open('[');
        remedy.changes().forEach(this::change);
        json.close(']')
                .key("result")
                .open('{')
                .number("least_reserve_share", remedy.leastReserveShare())
                .number("least_headroom", remedy.leastHeadroom())
                .number("cost", remedy.cost())
                .close('}')
                .close('}');
    }

    /** In the words of plan.set, plan.add and plan.drop. */
    private void change(Step step) {
        json.open('{');
        if (step instanceof Step.Set set) {
            json.text("set", set.path()).key("to");
            cell(set.to());
        } else if (step instanceof Step.Add add) {
            json.text("add", add.table()).key("row");
            row(add.row());
        } else if (step instanceof Step.Drop drop) {
            json.text("drop", drop.id());
        }
        json.close('}');
    }

    private void row(Row row) {
        json.open('{').text("id", row.id());
        row.forEach((name, cell) -> {
            json.key(name);
            cell(cell);
        });
        json.close('}');
    }

    private void cell(Cell cell) {
        if (cell.form() == Cell.Form.YES_NO) {
            json.bool(cell.text().equals("yes"));
        } else {
            json.text(cell.text());
        }
    }
}
