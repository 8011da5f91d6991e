package farwatt.catalogue;

import farwatt.report.Code;

/** What is said about cells and about edits that go by the catalogue; sentences in the message catalogue. */
public enum CatalogueCode implements Code {
    TAKEN_AS,
    TAKEN_IMPLAUSIBLE,
    IMPLAUSIBLE,
    PLAIN_NUMBER,
    OTHER_MEASURE,
    NO_DIFFERENCE,
    NO_TEMPERATURE,
    NEGATIVE,
    ZERO,
    MORE_THAN_WHOLE,
    TOO_COLD,
    NOT_WHOLE,
    NO_QUANTITY,
    NEARLY_WORD,
    NOT_IN_LIST,
    NEITHER_YES_NOR_NO,
    NO_ROW_ID,
    NO_CELL,
    EDIT_COPY,
    EDIT_DROP,
    EDIT_RENAME,
    NO_NAME,
    NOT_A_NAME,
    TAKEN_NAME;

    @Override
    public String room() {
        return "catalogue";
    }
}
