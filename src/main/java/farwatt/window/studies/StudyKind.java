package farwatt.window.studies;

import static farwatt.window.studies.StudyField.COPY;
import static farwatt.window.studies.StudyField.HOLDS;
import static farwatt.window.studies.StudyField.MOST;
import static farwatt.window.studies.StudyField.READ;
import static farwatt.window.studies.StudyField.RUNS;
import static farwatt.window.studies.StudyField.SEED;
import static farwatt.window.studies.StudyField.SPAN;
import static farwatt.window.studies.StudyField.STEP;
import static farwatt.window.studies.StudyField.TOLERANCE;
import static farwatt.window.studies.StudyField.UNTIL;
import static farwatt.window.studies.StudyField.VARY;

import java.util.List;

/** What can be asked of a plan by calculating it many times. */
public enum StudyKind {
    SWEEP("How does it fare with other values?", List.of(VARY, READ)),
    GROW("How many more can be added?", List.of(COPY, UNTIL, MOST)),
    LIMIT("How far can a value go?", List.of(SPAN, HOLDS)),
    SPREAD("How sure is a figure?", List.of(TOLERANCE, READ, RUNS, SEED)),
    SENSITIVITY("What moves a figure most?", List.of(READ, STEP)),
    ROOM("What still fits where?", List.of());

    private final String question;

    @SuppressWarnings("ImmutableEnumChecker") // an unchangeable list
    private final List<StudyField> fields;

    StudyKind(String question, List<StudyField> fields) {
        this.question = question;
        this.fields = fields;
    }

    public String question() {
        return question;
    }

    public List<StudyField> fields() {
        return fields;
    }

    /** True where a field takes several lines. */
    public boolean takesMany(StudyField field) {
        return field == VARY || field == TOLERANCE || (field == READ && this != SENSITIVITY);
    }
}
