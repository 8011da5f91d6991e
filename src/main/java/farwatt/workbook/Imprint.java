package farwatt.workbook;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What every page says of where it comes from.
 *
 * @param title of the plan or study
 * @param version of the program
 * @param fingerprint of the plan file
 * @param date on the record; also the workbook's own date, so that the same content gives the same file
 */
public record Imprint(String title, String version, Optional<String> fingerprint, LocalDate date, Paper paper) {}
