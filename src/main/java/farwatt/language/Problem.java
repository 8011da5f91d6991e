package farwatt.language;

import farwatt.report.Code;
import farwatt.report.Span;
import java.util.Optional;

/**
 * A mistake in a text.
 *
 * @param span the place
 * @param code which kind
 * @param text the sentence: what was found, what was wanted, a near name
 * @param instead what could stand in the place, if something is near
 */
public record Problem(Span span, Code code, String text, Optional<String> instead) {}
