package farwatt.engine;

/** The corner that answers are being worked out for. */
final class AnswerCorner {
    private Corner now = Corner.MOST;

    Corner now() {
        return now;
    }

    void look(Corner other) {
        now = other;
    }
}
