package farwatt.language;

import farwatt.report.Code;

/** Parts of sentences. */
enum Phrase implements Code {
    DID_YOU_MEAN,
    THE_END,
    A_NUMBER,
    A_QUANTITY,
    A_POWER,
    A_VOLTAGE,
    A_CURRENT,
    A_RESISTANCE,
    A_LENGTH,
    A_DIFFERENCE,
    A_TIME,
    A_RATE,
    AN_ENERGY,
    MONEY,
    A_TEMPERATURE,
    A_GAUGE,
    YES_OR_NO,
    A_TEXT,
    ONE_OF,
    ANYTHING,
    A_PRODUCT,
    AN_EXPONENT,
    EITHER;

    @Override
    public String room() {
        return "language";
    }
}
