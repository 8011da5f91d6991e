package farwatt.window.studies;

import java.util.List;

/**
 * What a study found.
 *
 * @param said the answer in sentences
 */
public record StudyResult(StudyKind kind, Basis basis, List<String> said, StudyTable table, Drawing drawing) {
    public StudyResult {
        said = List.copyOf(said);
    }
}
