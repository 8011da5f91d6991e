package farwatt.workbook;

/** A sum, compensated so that the order of what is added does not show (Neumaier's summation). */
final class Sum {
    private double sum;
    private double lost;

    void add(double value) {
        double next = sum + value;
        lost += Math.abs(sum) >= Math.abs(value) ? (sum - next) + value : (value - next) + sum;
        sum = next;
    }

    double value() {
        return sum + lost;
    }
}
