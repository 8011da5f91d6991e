package farwatt.intake;

/** What a column's unit measures. */
enum Measure {
    NONE,
    POWER,
    CURRENT,
    VOLTS,
    LENGTH,
    TEMPERATURE,
    SHARE,
    RATE,
    MONEY,
    GAUGE
}
