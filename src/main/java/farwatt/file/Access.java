package farwatt.file;

/** What may be done with an opened plan. */
public enum Access {
    EDIT,
    /** Written by a newer version: what this one does not know would be lost. */
    READ_ONLY
}
