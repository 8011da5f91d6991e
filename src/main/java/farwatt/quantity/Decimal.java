package farwatt.quantity;

/** Which sign parts the whole from the decimals in what a person types. Files always use the point. */
public enum Decimal {
    POINT,
    COMMA
}
