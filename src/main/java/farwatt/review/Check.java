package farwatt.review;

/** One subject that is looked into. */
@FunctionalInterface
interface Check {
    /** Looks at the values as they are now and adds what it finds. */
    void look(Findings findings);
}
