package farwatt.picture;

import farwatt.report.Code;

/** What is said about pictures; sentences in the message catalogue. */
public enum PictureCode implements Code {
    ENDING,
    NO_FONTS;

    @Override
    public String room() {
        return "picture";
    }
}
