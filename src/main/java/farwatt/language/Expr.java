package farwatt.language;

import farwatt.quantity.Typed;
import farwatt.report.Span;
import java.util.List;
import java.util.Optional;

/**
 * An expression as read. Chains of like operators are flat lists, so that long sums need no deep trees; parentheses
 * leave no trace beyond the shape.
 */
public sealed interface Expr {
    /** Where it stands in the text. */
    Span span();

    /** Hands itself to the visitor's method for its kind. */
    <P, R> R accept(Visitor<P, R> visitor, P with);

    /** One method for each kind of expression. */
    interface Visitor<P, R> {
        R quantity(Quantity e, P with);

        R text(Text e, P with);

        R word(Word e, P with);

        R name(Name e, P with);

        R row(Row e, P with);

        R path(Path e, P with);

        R negative(Negative e, P with);

        R not(Not e, P with);

        R power(Power e, P with);

        R chain(Chain e, P with);

        R compare(Compare e, P with);

        R condition(If e, P with);

        R call(Call e, P with);

        R gather(Gather e, P with);

        R broken(Broken e, P with);
    }

    /** A literal; only temperatures have a sign of their own. */
    record Quantity(Span span, Typed typed) implements Expr {
        @Override
        public <P, R> R accept(Visitor<P, R> visitor, P with) {
            return visitor.quantity(this, with);
        }
    }

    /** A text in double quotes. */
    record Text(Span span, String text) implements Expr {
        @Override
        public <P, R> R accept(Visitor<P, R> visitor, P with) {
            return visitor.text(this, with);
        }
    }

    /** {@code yes}, {@code no}, {@code this} or {@code plan}. */
    record Word(Span span, Keyword keyword) implements Expr {
        @Override
        public <P, R> R accept(Visitor<P, R> visitor, P with) {
            return visitor.word(this, with);
        }
    }

    /** A bare name. */
    record Name(Span span, String name) implements Expr {
        @Override
        public <P, R> R accept(Visitor<P, R> visitor, P with) {
            return visitor.name(this, with);
        }
    }

    /** The id of a row in single quotes. */
    record Row(Span span, String id) implements Expr {
        @Override
        public <P, R> R accept(Visitor<P, R> visitor, P with) {
            return visitor.row(this, with);
        }
    }

    /** A word with its place: a name after a point, of a function, of a table. */
    record Part(Span span, String name) {}

    /** Names after points; never starts with a path. */
    record Path(Span span, Expr root, List<Part> members) implements Expr {
        public Path {
            members = List.copyOf(members);
        }

        @Override
        public <P, R> R accept(Visitor<P, R> visitor, P with) {
            return visitor.path(this, with);
        }
    }

    /** A minus in front. */
    record Negative(Span span, Expr of) implements Expr {
        @Override
        public <P, R> R accept(Visitor<P, R> visitor, P with) {
            return visitor.negative(this, with);
        }
    }

    record Not(Span span, Expr of) implements Expr {
        @Override
        public <P, R> R accept(Visitor<P, R> visitor, P with) {
            return visitor.not(this, with);
        }
    }

    record Power(Span span, Expr base, Expr exponent) implements Expr {
        @Override
        public <P, R> R accept(Visitor<P, R> visitor, P with) {
            return visitor.power(this, with);
        }
    }

    /** An operator and what stands after it. */
    record Step(Operator operator, Expr of) {}

    /** Operators of one level from left to right; never starts with a chain of the same level. */
    record Chain(Span span, Expr first, List<Step> rest) implements Expr {
        public Chain {
            rest = List.copyOf(rest);
        }

        /** The level all its operators share. */
        public Operator.Level level() {
            return rest.get(0).operator().level();
        }

        @Override
        public <P, R> R accept(Visitor<P, R> visitor, P with) {
            return visitor.chain(this, with);
        }
    }

    record Compare(Span span, Expr left, Comparison how, Expr right) implements Expr {
        @Override
        public <P, R> R accept(Visitor<P, R> visitor, P with) {
            return visitor.compare(this, with);
        }
    }

    record Branch(Expr condition, Expr then) {}

    /** One branch or more, tried in order; what stands after the last {@code else} is no condition itself. */
    record If(Span span, List<Branch> branches, Expr otherwise) implements Expr {
        public If {
            branches = List.copyOf(branches);
        }

        @Override
        public <P, R> R accept(Visitor<P, R> visitor, P with) {
            return visitor.condition(this, with);
        }
    }

    record Call(Span span, Part function, List<Expr> arguments) implements Expr {
        public Call {
            arguments = List.copyOf(arguments);
        }

        @Override
        public <P, R> R accept(Visitor<P, R> visitor, P with) {
            return visitor.call(this, with);
        }
    }

    /** The rows a gather goes over: a table, all of it or what is on or under a node, and which of them count. */
    record RowsOf(Part table, Reach reach, Optional<Expr> base, Optional<Expr> where) {}

    /** Many rows to one value; a count has no body. */
    record Gather(Span span, GatherKind kind, Optional<Expr> body, RowsOf rows) implements Expr {
        @Override
        public <P, R> R accept(Visitor<P, R> visitor, P with) {
            return visitor.gather(this, with);
        }
    }

    /** A stretch that could not be read, with the parts of it that could. */
    record Broken(Span span, List<Expr> parts) implements Expr {
        public Broken {
            parts = List.copyOf(parts);
        }

        @Override
        public <P, R> R accept(Visitor<P, R> visitor, P with) {
            return visitor.broken(this, with);
        }
    }
}
