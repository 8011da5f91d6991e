package farwatt.language;

/** The comparisons. */
public enum Comparison {
    LESS("<"),
    AT_MOST("<="),
    MORE(">"),
    AT_LEAST(">="),
    IS("is"),
    IS_NOT("is not");

    private final String sign;

    Comparison(String sign) {
        this.sign = sign;
    }

    /** As it is typed. */
    public String sign() {
        return sign;
    }

    /** True for those that ask for sameness, not for order. */
    public boolean isSameness() {
        return this == IS || this == IS_NOT;
    }
}
