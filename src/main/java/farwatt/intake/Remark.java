package farwatt.intake;

import farwatt.report.Messages;

/**
 * What is said about a row.
 *
 * @param weight what it means for the row
 * @param code which kind
 * @param text the sentence
 */
record Remark(Weight weight, IntakeSays code, String text) {
    /** What a remark means for its row. Order: the heaviest last. */
    enum Weight {
        /** Taken as it is, but someone should look. */
        FLAG,
        /** Taken otherwise than it stands there. */
        CHANGE,
        /** Not taken until a person decides. */
        HOLD,
        /** No device. */
        OUT
    }

    static Remark flag(IntakeSays code, Object... parts) {
        return new Remark(Weight.FLAG, code, Messages.text(code, parts));
    }

    static Remark change(IntakeSays code, Object... parts) {
        return new Remark(Weight.CHANGE, code, Messages.text(code, parts));
    }

    static Remark hold(IntakeSays code, Object... parts) {
        return new Remark(Weight.HOLD, code, Messages.text(code, parts));
    }

    static Remark out(IntakeSays code, Object... parts) {
        return new Remark(Weight.OUT, code, Messages.text(code, parts));
    }
}
