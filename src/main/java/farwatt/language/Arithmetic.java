package farwatt.language;

import farwatt.report.Span;

/** Formulas that reckon. Each hands on the first fault of its operands, and raises one where a result is no number. */
final class Arithmetic {
    private Arithmetic() {}

    record Negate(Formula of) implements Formula {
        @Override
        public double value(Frame frame) {
            double v = of.value(frame);
            return Double.isNaN(v) ? v : -v;
        }
    }

    record Plus(Formula left, Formula right, Span span) implements Formula {
        @Override
        public double value(Frame frame) {
            double a = left.value(frame);
            if (Double.isNaN(a)) {
                return a;
            }
            double b = right.value(frame);
            return Double.isNaN(b) ? b : Nodes.checked(a + b, frame, span);
        }
    }

    record Minus(Formula left, Formula right, Span span) implements Formula {
        @Override
        public double value(Frame frame) {
            double a = left.value(frame);
            if (Double.isNaN(a)) {
                return a;
            }
            double b = right.value(frame);
            return Double.isNaN(b) ? b : Nodes.checked(a - b, frame, span);
        }
    }

    record Times(Formula left, Formula right, Span span) implements Formula {
        @Override
        public double value(Frame frame) {
            double a = left.value(frame);
            if (Double.isNaN(a)) {
                return a;
            }
            double b = right.value(frame);
            return Double.isNaN(b) ? b : Nodes.checked(a * b, frame, span);
        }
    }

    /** A quotient; the span is the divisor's. */
    record Over(Formula left, Formula right, Span span) implements Formula {
        @Override
        public double value(Frame frame) {
            double a = left.value(frame);
            if (Double.isNaN(a)) {
                return a;
            }
            double b = right.value(frame);
            if (Double.isNaN(b)) {
                return b;
            }
            return b == 0 ? frame.faults.raise(FaultKind.DIVISION_BY_ZERO, span) : Nodes.checked(a / b, frame, span);
        }
    }

    /** A long chain from left to right, without a deep tree. */
    static final class Run implements Formula {
        private final Formula first;
        private final Operator[] operators;
        private final Formula[] rest;
        private final Span[] spans;

        Run(Formula first, Operator[] operators, Formula[] rest, Span[] spans) {
            this.first = first;
            this.operators = operators;
            this.rest = rest;
            this.spans = spans;
        }

        @Override
        public double value(Frame frame) {
            double sum = first.value(frame);
            for (int i = 0; i < rest.length && !Double.isNaN(sum); i++) {
                double next = rest[i].value(frame);
                if (Double.isNaN(next)) {
                    return next;
                }
                sum = step(operators[i], sum, next, frame, spans[i]);
            }
            return sum;
        }

        private static double step(Operator operator, double a, double b, Frame frame, Span span) {
            return switch (operator) {
                case PLUS -> Nodes.checked(a + b, frame, span);
                case MINUS -> Nodes.checked(a - b, frame, span);
                case TIMES -> Nodes.checked(a * b, frame, span);
                default ->
                    b == 0 ? frame.faults.raise(FaultKind.DIVISION_BY_ZERO, span) : Nodes.checked(a / b, frame, span);
            };
        }
    }

    record Power(Formula base, Formula exponent, Span span) implements Formula {
        @Override
        public double value(Frame frame) {
            double a = base.value(frame);
            if (Double.isNaN(a)) {
                return a;
            }
            double b = exponent.value(frame);
            if (Double.isNaN(b)) {
                return b;
            }
            if (a == 0 && b < 0) {
                return frame.faults.raise(FaultKind.DIVISION_BY_ZERO, span);
            }
            double power = b == 2 ? a * a : Math.pow(a, b);
            return !Double.isNaN(power)
                    ? Nodes.checked(power, frame, span)
                    : frame.faults.raise(FaultKind.NOT_REAL, span);
        }
    }

    record Abs(Formula of) implements Formula {
        @Override
        public double value(Frame frame) {
            double v = of.value(frame);
            return Double.isNaN(v) ? v : Math.abs(v);
        }
    }

    record Root(Formula of, Span span) implements Formula {
        @Override
        public double value(Frame frame) {
            double v = of.value(frame);
            if (Double.isNaN(v)) {
                return v;
            }
            return v < 0 ? frame.faults.raise(FaultKind.NOT_REAL, span) : Math.sqrt(v);
        }
    }

    /** The nearest whole number of steps, the next below or the next above. Halves go away from zero. */
    record Stepped(Function function, Formula of, Formula step, Span span) implements Formula {
        @Override
        public double value(Frame frame) {
            double v = of.value(frame);
            if (Double.isNaN(v)) {
                return v;
            }
            double width = step.value(frame);
            if (Double.isNaN(width)) {
                return width;
            }
            if (width == 0) {
                return frame.faults.raise(FaultKind.DIVISION_BY_ZERO, span);
            }
            return Nodes.checked(steps(v / Math.abs(width)) * Math.abs(width), frame, span);
        }

        private double steps(double exact) {
            double nearest = Math.copySign(Math.floor(Math.abs(exact) + 0.5), exact);
            // 0.3 / 0.1 is a hair below 3: a whole number of steps stays one
            if (function == Function.ROUND || Tolerance.same(exact, nearest)) {
                return nearest;
            }
            return function == Function.DOWN ? Math.floor(exact) : Math.ceil(exact);
        }
    }

    /** The least or the greatest of some values. */
    static final class Extreme implements Formula {
        private final Formula[] values;
        private final double sign;

        Extreme(Function function, Formula[] values) {
            this.values = values;
            this.sign = function == Function.MIN ? 1 : -1;
        }

        @Override
        public double value(Frame frame) {
            double best = values[0].value(frame);
            for (int i = 1; i < values.length && !Double.isNaN(best); i++) {
                double v = values[i].value(frame);
                if (Double.isNaN(v)) {
                    return v;
                }
                if (v * sign < best * sign) {
                    best = v;
                }
            }
            return best;
        }
    }
}
