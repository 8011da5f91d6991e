package farwatt.language;

import farwatt.language.Operator.Level;
import java.util.List;
import java.util.Optional;

/** Writes an expression in its one canonical form: the fewest parentheses, one space, plain spellings. */
final class Printer implements Expr.Visitor<Level, StringBuilder> {
    private final StringBuilder out = new StringBuilder();

    private Printer() {}

    static String print(Expr expr) {
        Printer printer = new Printer();
        printer.put(expr, Level.IF);
        return printer.out.toString();
    }

    /** The id of a row as it is written in an expression. */
    static String quotedRow(String id) {
        return "'" + id.replace("'", "''") + "'";
    }

    /** A text as it is written in an expression. */
    static String quotedText(String text) {
        return "\"" + text.replace("\"", "\"\"") + "\"";
    }

    private void put(Expr expr, Level least) {
        expr.accept(this, least);
    }

    private boolean open(Level own, Level least) {
        boolean needed = own.compareTo(least) < 0;
        if (needed) {
            out.append('(');
        }
        return needed;
    }

    private StringBuilder close(boolean opened) {
        if (opened) {
            out.append(')');
        }
        return out;
    }

    private StringBuilder plain(String text) {
        return out.append(text);
    }

    @Override
    public StringBuilder quantity(Expr.Quantity e, Level least) {
        return plain(e.typed().text());
    }

    @Override
    public StringBuilder text(Expr.Text e, Level least) {
        return plain(quotedText(e.text()));
    }

    @Override
    public StringBuilder word(Expr.Word e, Level least) {
        return plain(e.keyword().word());
    }

    @Override
    public StringBuilder name(Expr.Name e, Level least) {
        return plain(e.name());
    }

    @Override
    public StringBuilder row(Expr.Row e, Level least) {
        return plain(quotedRow(e.id()));
    }

    @Override
    public StringBuilder path(Expr.Path e, Level least) {
        put(e.root(), Level.PRIMARY);
        e.members().forEach(member -> out.append('.').append(member.name()));
        return out;
    }

    @Override
    public StringBuilder negative(Expr.Negative e, Level least) {
        boolean opened = open(Level.UNARY, least);
        out.append('-');
        // -5 degC is one literal: the minus of something that starts with 5 degC keeps its distance
        boolean apart =
                temperatureInFront(e.of()).filter(number -> !isSigned(number)).isPresent();
        apart(e.of(), Level.UNARY, apart);
        return close(opened);
    }

    /** In parentheses of its own if it has to keep apart from what stands before it. */
    private void apart(Expr expr, Level least, boolean apart) {
        if (apart) {
            out.append('(');
        }
        put(expr, apart ? Level.IF : least);
        close(apart);
    }

    /** The number of the temperature that an expression starts with. */
    private static Optional<String> temperatureInFront(Expr expr) {
        Expr first = expr;
        if (first instanceof Expr.Power power) {
            first = power.base();
        }
        if (first instanceof Expr.Path path) {
            first = path.root();
        }
        return first instanceof Expr.Quantity quantity
                        && quantity.typed().unit().isAbsoluteTemperature()
                ? Optional.of(quantity.typed().number())
                : Optional.empty();
    }

    private static boolean isSigned(String number) {
        return number.startsWith("-");
    }

    @Override
    public StringBuilder not(Expr.Not e, Level least) {
        boolean opened = open(Level.NOT, least);
        out.append("not ");
        put(e.of(), Level.COMPARE);
        return close(opened);
    }

    @Override
    public StringBuilder power(Expr.Power e, Level least) {
        boolean opened = open(Level.POWER, least);
        put(e.base(), Level.PATH);
        out.append(" ^ ");
        put(e.exponent(), Level.UNARY);
        return close(opened);
    }

    @Override
    public StringBuilder chain(Expr.Chain e, Level least) {
        boolean opened = open(e.level(), least);
        Level inner = Level.values()[e.level().ordinal() + 1];
        put(e.first(), inner);
        for (Expr.Step step : e.rest()) {
            out.append(' ').append(step.operator().sign()).append(' ');
            put(step.of(), inner);
        }
        return close(opened);
    }

    @Override
    public StringBuilder compare(Expr.Compare e, Level least) {
        boolean opened = open(Level.COMPARE, least);
        put(e.left(), Level.SUM);
        out.append(' ').append(e.how().sign()).append(' ');
        put(e.right(), Level.SUM);
        return close(opened);
    }

    @Override
    public StringBuilder condition(Expr.If e, Level least) {
        boolean opened = open(Level.IF, least);
        for (Expr.Branch branch : e.branches()) {
            out.append("if ");
            put(branch.condition(), Level.IF);
            out.append(" then ");
            put(branch.then(), Level.IF);
            out.append(" else ");
        }
        put(e.otherwise(), Level.IF);
        return close(opened);
    }

    @Override
    public StringBuilder call(Expr.Call e, Level least) {
        out.append(e.function().name()).append('(');
        List<Expr> arguments = e.arguments();
        for (int i = 0; i < arguments.size(); i++) {
            out.append(i == 0 ? "" : ", ");
            put(arguments.get(i), Level.IF);
        }
        return plain(")");
    }

    @Override
    public StringBuilder gather(Expr.Gather e, Level least) {
        out.append(e.kind().word()).append('(');
        e.body().ifPresent(body -> {
            put(body, Level.IF);
            out.append(" of ");
        });
        Expr.RowsOf rows = e.rows();
        out.append(rows.table().name());
        rows.base().ifPresent(base -> {
            out.append(' ').append(rows.reach().word()).append(' ');
            // a sign of its own is read only where a minus may stand
            apart(
                    base,
                    Level.PATH,
                    temperatureInFront(base).filter(Printer::isSigned).isPresent());
        });
        rows.where().ifPresent(where -> {
            out.append(" where ");
            put(where, Level.IF);
        });
        return plain(")");
    }

    @Override
    public StringBuilder broken(Expr.Broken e, Level least) {
        throw new IllegalArgumentException("what could not be read cannot be written");
    }
}
