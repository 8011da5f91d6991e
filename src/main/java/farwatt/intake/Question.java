package farwatt.intake;

import java.util.List;

/**
 * Something about a list that a person should decide. The intake goes on with what it says it used; an answer in the
 * {@link Mapping} under the key makes it read the list again by that.
 *
 * @param key names the question for an answer, such as {@code hidden_rows} or {@code decimal:Length}
 * @param text the question
 * @param choices what may be answered; empty when any text may
 * @param used what was taken for now, one of the choices
 */
public record Question(String key, String text, List<String> choices, String used) {
    public Question {
        choices = List.copyOf(choices);
    }
}
