package farwatt.intake;

import java.util.List;

/**
 * All numbers of a cell and how they hang together.
 *
 * @param list in their order
 * @param join how they hang together
 * @param words what is no number, unit or known remark, outside brackets
 * @param remarks the same inside brackets
 * @param broken true when the cell holds digits that make no number, or a number below zero
 * @param negative true when a number has a minus sign
 */
record Figures(
        List<Figure> list, Join join, List<String> words, List<String> remarks, boolean broken, boolean negative) {
    /** How the numbers of a cell hang together. */
    enum Join {
        /** One number, or several that are alternatives: 7 / 11.5. */
        SEPARATE,
        /** From one to the other: 6-8. */
        RANGE,
        SUM,
        /** 2 x 6.5, or volts times amps. */
        PRODUCT,
        /** 6.5 ± 10 %. */
        SPREAD,
        /** 5 ft 3 in. */
        FEET_INCHES
    }

    Figures {
        list = List.copyOf(list);
        words = List.copyOf(words);
        remarks = List.copyOf(remarks);
    }

    boolean isEmpty() {
        return list.isEmpty();
    }
}
