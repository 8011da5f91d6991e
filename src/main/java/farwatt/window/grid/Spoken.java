package farwatt.window.grid;

import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.plan.Table;
import farwatt.quantity.Decimal;
import farwatt.quantity.Reader;
import farwatt.quantity.Units;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Cells and headings as sentences for screen readers, and figures with the person's own decimal sign. */
final class Spoken {
    private static final Units UNITS = new Units("");

    private Spoken() {}

    /** A shown value with the person's decimal sign. */
    static String figure(Face face, Decimal decimal) {
        boolean swap = decimal == Decimal.COMMA && !Double.isNaN(face.figure());
        return swap ? face.text().replace('.', ',') : face.text();
    }

    /** A typed text with the person's decimal sign where it is one quantity; expressions stay as they are. */
    static String typed(String text, Column column, Decimal decimal) {
        boolean quantity = column.name().kind() instanceof Kind.Quantity
                || column.name().kind() instanceof Kind.Gauge
                || isFree(column.name());
        boolean swap = decimal == Decimal.COMMA && quantity && text.indexOf('.') >= 0 && isLiteral(text);
        return swap ? text.replace('.', ',') : text;
    }

    private static boolean isFree(Name name) {
        return name.key().equals("is") && (name.table() == Table.VALUES || name.table() == Table.PRACTICE);
    }

    private static boolean isLiteral(String text) {
        int unit = text.indexOf(' ');
        String number = unit < 0 ? text : text.substring(0, unit);
        return Reader.read(number, UNITS, Decimal.POINT).isPresent()
                && text.indexOf('(') < 0
                && text.chars().filter(c -> c == ' ').count() <= 1;
    }

    /** Row, column, value with unit, and whatever colours and marks say. */
    static String cell(GridModel model, int row, int column) {
        Face face = model.face(row, column);
        Column one = model.columns().get(column);
        List<String> parts = new ArrayList<>();
        if (one.tint() != Column.Tint.IDENTITY) {
            parts.add(model.id(row));
        }
        parts.add(one.key() + " " + (face.text().isEmpty() ? Messages.text(GridCode.CELL_EMPTY) : model.text(face)));
        origin(face).map(Messages::text).ifPresent(parts::add);
        face.base().ifPresent(base -> parts.add(Messages.text(GridCode.CELL_BASE, base)));
        face.notice().map(Notice::text).ifPresent(parts::add);
        verdict(model.verdict(row)).map(Messages::text).ifPresent(parts::add);
        return String.join(", ", parts);
    }

    private static Optional<GridCode> origin(Face face) {
        return switch (face.origin()) {
            case DEFAULT -> Optional.of(GridCode.CELL_DEFAULT);
            case EXPRESSION -> Optional.of(GridCode.CELL_EXPRESSION);
            case WAITING -> Optional.of(GridCode.CELL_WAITING);
            case EMPTY, TYPED, SOLVED, OWN, FAULT -> Optional.empty();
        };
    }

    private static Optional<GridCode> verdict(Optional<Level> level) {
        return level.flatMap(worst -> switch (worst) {
            case FAIL -> Optional.of(GridCode.ROW_FAILS);
            case WARN -> Optional.of(GridCode.ROW_WARNS);
            case NOTE -> Optional.<GridCode>empty();
        });
    }

    /** Name, unit, sort, and how rows stand by it. */
    static String heading(GridModel model, Column column) {
        List<String> parts = new ArrayList<>();
        parts.add(
                column.unit().isEmpty()
                        ? Messages.text(
                                GridCode.HEADING, column.key(), column.tint().word())
                        : Messages.text(
                                GridCode.HEADING_UNIT,
                                column.key(),
                                column.unit(),
                                column.tint().word()));
        model.order()
                .by()
                .filter(by -> by.key().equals(column.key()))
                .ifPresent(by -> parts.add(
                        Messages.text(by.way() == RowOrder.Way.UP ? GridCode.SORTED_UP : GridCode.SORTED_DOWN)));
        if (model.columnSet().isHeld(column.key())) {
            parts.add(Messages.text(GridCode.HELD));
        }
        return String.join(", ", parts);
    }

    /** What a heading's sentence says about the column, with the default and the formula. */
    static String about(Column column) {
        Name name = column.name();
        StringBuilder out = new StringBuilder(column.key())
                .append(" – ")
                .append(column.tint().word());
        if (!name.sentence().isEmpty()) {
            out.append('\n').append(name.sentence());
        }
        if (!name.fallback().text().isEmpty()) {
            out.append('\n')
                    .append(Messages.text(GridCode.CELL_DEFAULT))
                    .append(": ")
                    .append(name.fallback().text());
        }
        return name.formula().isEmpty()
                ? out.toString()
                : out.append('\n').append(name.formula()).toString();
    }
}
