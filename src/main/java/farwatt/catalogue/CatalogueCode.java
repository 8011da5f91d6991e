package farwatt.catalogue;

import farwatt.report.Code;

/** What reading a cell says; sentences in the message catalogue. */
public enum CatalogueCode implements Code {
    NOT_A_CELL,
    NOT_YES_NO,
    WRONG_UNIT,
    UNIT_ADDED,
    PLAIN_NUMBER,
    IMPLAUSIBLE,
    BELOW_ZERO,
    NOT_A_SHARE,
    NOT_ABOVE_ZERO,
    NOT_WHOLE;

    @Override
    public String room() {
        return "catalogue";
    }
}
