package farwatt.intake;

import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.List;

/**
 * A file or a pasted text parted into sheets.
 *
 * @param sheets in their order
 * @param notices how it was read
 * @param questions what a person should decide about the reading
 */
record ListFile(List<Sheet> sheets, List<Notice> notices, List<Question> questions) {
    ListFile {
        sheets = List.copyOf(sheets);
        notices = List.copyOf(notices);
        questions = List.copyOf(questions);
    }

    static Notice note(IntakeSays code, Object... parts) {
        return Notice.of(Level.NOTE, code, Place.NONE, parts);
    }
}
