package farwatt.picture;

/** How heavy a text is set. */
public enum Weight {
    PLAIN,
    BOLD
}
