package farwatt.workbook;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Kind;
import farwatt.engine.Corner;
import farwatt.plan.Table;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.report.Level;
import farwatt.report.Place;
import farwatt.review.Finding;
import farwatt.review.Remedy;
import farwatt.review.Review;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the review found, and what is always to be minded. */
final class FindingTable {
    private FindingTable() {}

    static Schedule findings(Review review, Units units) {
        List<Column> columns = List.of(
                Column.of("level", "level", Form.WORD),
                Column.of("row", "where", Form.WORD),
                Column.of("name", "figure", Form.WORD),
                Column.of("corner", "corner", Form.WORD),
                Column.of("text", "finding", Form.SENTENCE),
                Column.of("value", "value", Form.FREE),
                Column.of("limit", "limit", Form.FREE),
                Column.of("unit", "unit", Form.WORD),
                Column.of("remedies", "what mends it", Form.SENTENCE),
                Column.of("caution", "mind", Form.SENTENCE),
                Column.of("source", "held against", Form.SENTENCE));
        List<List<Entry>> lines = new ArrayList<>();
        review.findings().forEach(finding -> lines.add(line(finding, units)));
        return Schedule.trimmed(
                Titles.FINDINGS,
                "What fails, then what someone should look at, then what is good to know.",
                List.of(),
                columns,
                lines);
    }

    static Schedule cautions(Review review) {
        List<Column> columns =
                List.of(Column.of("number", "no.", Form.WHOLE), Column.of("text", "to mind", Form.PARAGRAPH));
        List<List<Entry>> lines = new ArrayList<>();
        for (String caution : review.cautions()) {
            lines.add(List.of(Entry.number(lines.size() + 1), Entry.words(caution)));
        }
        return new Schedule(
                Titles.CAUTIONS,
                "A planning aid. The adopted code, the makers' instructions and a licensed person come first.",
                columns,
                Schedule.Lines.of(lines));
    }

    private static List<Entry> line(Finding finding, Units units) {
        Place place = finding.place();
        Unit unit = unit(place, units);
        Form form = Form.of(unit);
        return List.of(
                Entry.words(finding.level().word()).in(tone(finding.level())),
                Entry.words(place.row().isEmpty() ? place.table() : place.row()),
                Entry.words(place.name().replace('_', ' ')),
                Entry.words(finding.corner().map(Corner::word).orElse("")),
                Entry.words(finding.text()),
                Entry.number(Figure.number(finding.value(), unit)).as(form),
                Entry.number(Figure.number(finding.limit(), unit)).as(form),
                Entry.words(Figure.symbol(unit.symbol())),
                Entry.words(finding.remedies().stream().map(Remedy::text).collect(Collectors.joining("\n"))),
                Entry.words(finding.caution()),
                Entry.words(finding.source()));
    }

    static Tone tone(Level level) {
        return switch (level) {
            case FAIL -> Tone.BAD;
            case WARN -> Tone.POOR;
            case NOTE -> Tone.PLAIN;
        };
    }

    private static Unit unit(Place place, Units units) {
        Optional<Table> table = Table.of(place.table());
        return table.flatMap(t -> Catalogue.find(t, place.name()))
                .filter(name -> name.kind() instanceof Kind.Quantity || name.kind() instanceof Kind.Gauge)
                .map(name -> units.need(name.kind().symbol(units)))
                .orElse(Unit.ONE);
    }
}
