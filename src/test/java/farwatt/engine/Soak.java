package farwatt.engine;

/** How much a test does: a little in every build, all of it when a build is told to take its time. */
final class Soak {
    private Soak() {}

    static int times(int usual, int whole) {
        return Boolean.getBoolean("farwatt.soak") ? whole : usual;
    }
}
