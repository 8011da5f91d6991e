package farwatt.engine;

import farwatt.language.Problem;
import java.util.List;
import java.util.Optional;

/**
 * What was asked and what came of it.
 *
 * @param text the expression as asked
 * @param value its value; empty if it could not be understood
 * @param problems what could not be understood, with places in the text
 */
public record Answer(String text, Optional<Value> value, List<Problem> problems) {}
