package farwatt.language;

/** The operators that make chains. */
public enum Operator {
    PLUS("+", Level.SUM),
    MINUS("-", Level.SUM),
    TIMES("*", Level.PRODUCT),
    OVER("/", Level.PRODUCT),
    AND("and", Level.AND),
    OR("or", Level.OR);

    private final String sign;
    private final Level level;

    Operator(String sign, Level level) {
        this.sign = sign;
        this.level = level;
    }

    /** As it is typed. */
    public String sign() {
        return sign;
    }

    public Level level() {
        return level;
    }

    /** The reserved word of {@code and} and {@code or}. */
    Keyword keyword() {
        return Keyword.valueOf(name());
    }

    /** How tightly the parts of an expression bind, loosest first. */
    public enum Level {
        IF,
        OR,
        AND,
        NOT,
        COMPARE,
        SUM,
        PRODUCT,
        UNARY,
        POWER,
        PATH,
        PRIMARY
    }
}
