package farwatt.language;

import farwatt.report.Span;

/** Formulas that read values and rows. Rows are their numbers. */
final class Nodes {
    private Nodes() {}

    record Constant(double number) implements Formula {
        @Override
        public double value(Frame frame) {
            return number;
        }
    }

    /** A column of the row at hand. */
    record Own(Column column) implements Formula {
        @Override
        public double value(Frame frame) {
            return column.at(frame.row);
        }
    }

    /** One fixed cell. */
    record Fixed(Column column, int row) implements Formula {
        @Override
        public double value(Frame frame) {
            return column.at(row);
        }
    }

    /** A column of a row that another formula gives. */
    record Far(Formula row, Column column) implements Formula {
        @Override
        public double value(Frame frame) {
            double at = row.value(frame);
            return Double.isNaN(at) ? at : column.at((int) at);
        }
    }

    /** The row at hand. */
    record Here() implements Formula {
        @Override
        public double value(Frame frame) {
            return frame.row;
        }
    }

    /** The row whose cell it is. */
    record Self() implements Formula {
        @Override
        public double value(Frame frame) {
            return frame.self;
        }
    }

    /** The row a relation leads to, or the host's reason why it leads nowhere. */
    record Follow(Formula row, Link link) implements Formula {
        @Override
        public double value(Frame frame) {
            double at = row.value(frame);
            if (Double.isNaN(at)) {
                return at;
            }
            int to = link.follow((int) at);
            return to < 0 ? link.why((int) at) : to;
        }
    }

    /** The first branch whose condition holds. */
    static final class Choose implements Formula {
        private final Formula[] conditions;
        private final Formula[] values;
        private final Formula otherwise;

        Choose(Formula[] conditions, Formula[] values, Formula otherwise) {
            this.conditions = conditions;
            this.values = values;
            this.otherwise = otherwise;
        }

        @Override
        public double value(Frame frame) {
            for (int i = 0; i < conditions.length; i++) {
                double holds = conditions[i].value(frame);
                if (Double.isNaN(holds)) {
                    return holds;
                }
                if (holds != 0) {
                    return values[i].value(frame);
                }
            }
            return otherwise.value(frame);
        }
    }

    /** A word's place in another list of words; the lists share it, or it has no place there (−1). */
    static final class Translate implements Formula {
        private final Formula word;
        private final int[] places;

        Translate(Formula word, int[] places) {
            this.word = word;
            this.places = places;
        }

        @Override
        public double value(Frame frame) {
            double place = word.value(frame);
            return Double.isNaN(place) ? place : places[(int) place];
        }
    }

    /** A finished number, or a fault if it is none. */
    static double checked(double number, Frame frame, Span span) {
        return Double.isFinite(number) ? number : frame.faults.raise(FaultKind.TOO_LARGE, span);
    }
}
