package farwatt.review;

import farwatt.report.Code;
import farwatt.report.Messages;

/** What a remedy changes and what a take-off counts, in words of the trade; they stand in the message catalogue. */
enum TryPhrase implements Code {
    TRY_FROM_TO,
    TRY_PAIRS,
    TRY_COPPER,
    TRY_LENGTH,
    TRY_CORD,
    TRY_CORD_GAUGE,
    TRY_SCREENED,
    TRY_HEAT_RATED,
    TRY_SHEATH,
    TRY_APART,
    TRY_SPLIT,
    TRY_SHADE,
    TRY_SETTING,
    TRY_BASIS,
    TRY_VOLTS,
    TRY_PORT_LIMIT,
    TRY_RUN_LIMIT,
    TRY_TYPE,
    TRY_BUDGET,
    TRY_RIGHT,
    TRY_CLASS,
    TRY_UPLINK_CLASS,
    TRY_GRANTS,
    TRY_PRIORITY,
    TRY_GUARD,
    TRY_PORTS,
    TRY_PORT,
    TRY_LINK,
    TRY_REGULATED,
    TRY_RATED,
    TRY_RATED_COLD,
    TRY_RATED_HOT,
    TRY_MOVE,
    TRY_SECOND,
    TRY_SECOND_PORT,
    TRY_WITHOUT,
    TRY_BOTH,
    TRY_RESERVE,
    TRY_RESERVE_NOW,
    TRY_RESERVE_OF,
    TRY_RESERVE_STAYS,
    TRY_DEARER,
    TRY_CHEAPER,
    TRY_NEAREST,
    TRY_NOTHING,
    TRY_UNSOUGHT,
    TAKE_CABLE,
    TAKE_SOURCE,
    TAKE_SWITCH;

    @Override
    public String room() {
        return "review";
    }

    String text(Object... parts) {
        return Messages.text(this, parts);
    }
}
