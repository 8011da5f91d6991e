package farwatt.picture;

import farwatt.report.Code;

/** What pictures say; sentences in the message catalogue. */
enum PictureCode implements Code {
    NO_FONT,
    BAD_ENDING,
    NO_FOLDER,
    IS_FOLDER,
    NOT_WRITTEN,
    CAUTION,
    NOTHING,
    NO_VALUES,
    FIGURES,
    UNDRAWN,
    NO_CHART,
    HELD,
    THINNED,
    STRONGEST,
    FITTED,
    HOLDS_TO,
    LIMIT,
    TARGET;

    @Override
    public String room() {
        return "picture";
    }
}
