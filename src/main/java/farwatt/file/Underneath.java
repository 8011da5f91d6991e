package farwatt.file;

/** What saving does when the file is not the one that was opened. */
public enum Underneath {
    REFUSE,
    /** The person was told and wants it. */
    OVERWRITE
}
