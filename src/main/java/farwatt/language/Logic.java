package farwatt.language;

/** Formulas that give yes (1) or no (0). */
final class Logic {
    private Logic() {}

    record Not(Formula of) implements Formula {
        @Override
        public double value(Frame frame) {
            double v = of.value(frame);
            return Double.isNaN(v) ? v : 1 - v;
        }
    }

    /** Stops at the first that decides: a no for {@code and}, a yes for {@code or}. */
    static final class Joined implements Formula {
        private final Formula[] parts;
        private final double deciding;

        Joined(Operator operator, Formula[] parts) {
            this.parts = parts;
            this.deciding = operator == Operator.AND ? 0 : 1;
        }

        @Override
        public double value(Frame frame) {
            for (Formula part : parts) {
                double v = part.value(frame);
                if (Double.isNaN(v) || v == deciding) {
                    return v;
                }
            }
            return 1 - deciding;
        }
    }

    /** Sameness of words, texts, rows and answers. */
    record Same(Formula left, Formula right, double ifSame) implements Formula {
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
            return a == b ? ifSame : 1 - ifSame;
        }
    }

    /** Comparison of quantities within {@link Tolerance}; the shift moves both onto a scale that starts at nothing. */
    record Compared(Comparison how, Formula left, Formula right, double shift) implements Formula {
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
            boolean same = Tolerance.same(a + shift, b + shift);
            boolean holds = switch (how) {
                case LESS -> a < b && !same;
                case AT_MOST -> a < b || same;
                case MORE -> a > b && !same;
                case AT_LEAST -> a > b || same;
                case IS -> same;
                case IS_NOT -> !same;
            };
            return holds ? 1 : 0;
        }
    }
}
