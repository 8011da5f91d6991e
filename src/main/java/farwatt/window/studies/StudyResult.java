package farwatt.window.studies;

import java.util.List;

/**
 * What a study found.
 *
 * @param said the answer in sentences
 * @param sheets the same for a hand-over workbook
 */
public record StudyResult(
        StudyKind kind,
        Basis basis,
        List<String> said,
        StudyTable table,
        Drawing drawing,
        List<farwatt.workbook.StudyTable> sheets) {
    public StudyResult {
        said = List.copyOf(said);
        sheets = List.copyOf(sheets);
    }
}
