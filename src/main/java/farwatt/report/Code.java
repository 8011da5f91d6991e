package farwatt.report;

/**
 * A kind of notice. Each room that speaks has one enum of these; the sentence of a code stands in the message
 * catalogue under {@link #key()}.
 */
public interface Code {
    /** The room's name, which is also the name of its part of the message catalogue. */
    String room();

    /** The name of the constant. */
    String name();

    /** The key others may rely on, such as {@code file.not_json}. */
    default String key() {
        return room() + "." + name().toLowerCase(java.util.Locale.ROOT);
    }
}
