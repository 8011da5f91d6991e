package farwatt.review;

import farwatt.report.Code;
import java.util.Optional;

/**
 * Everything the review may find; sentences in the message catalogue. The order is that in which a failing plan names
 * its reason: what tells most comes first.
 */
public enum ReviewCode implements Code {
    // what the circuit cannot do
    NO_OPERATING_POINT("maximum power transfer", Firm.YES),
    NO_OPERATING_POINT_TREE("maximum power transfer", Firm.YES),
    RUNAWAY("our calibration", Firm.YES, Phrase.CAUTION_HEAT),
    EXTRA_LOW("IEC 62368-1; check against your edition", Phrase.CAUTION_EXTRA_LOW),
    WATTS_LIMITED("IEC 62368-1; check against your edition", Phrase.CAUTION_EXTRA_LOW),
    VOLTS_MOST(Sources.STANDARD, Firm.NO),
    // who does not get its watts or volts
    OVERLOAD(Sources.LIMITS, Firm.NO),
    RIGHT(Sources.STANDARD, Firm.NO),
    PORT_LIMIT(Sources.STANDARD, Firm.NO),
    DEMOTED_SHORT(Sources.STANDARD, Firm.NO),
    OVER_CLASS(Sources.STANDARD, Firm.NO),
    OVER_ALL_CLASSES(Sources.STANDARD, Firm.NO),
    FLOOR_SWITCH(Sources.STANDARD, Firm.NO),
    FLOOR(Sources.STANDARD, Firm.NO),
    DARK_SWITCH("grants of its feeder", Firm.NO),
    DARK("grants of its feeder", Firm.NO),
    NO_CLASS(Sources.STANDARD, Firm.NO),
    PASSIVE_FLOOR(Sources.PRACTICE, Firm.NO),
    START_NEVER(Sources.PRACTICE, Firm.NO),
    RESERVE("the plan's reserve_target", Firm.NO),
    PORTS("its ports", Firm.NO),
    PORT_NUMBER("its ports", Firm.NO),
    PORT_TWICE("its ports", Firm.NO),
    // what cannot be judged
    NO_VALUE("", Firm.YES),
    NEED("the plan's needs", Firm.YES),
    NEED_UNKNOWN("the plan's needs", Firm.YES),
    // cable
    HOT_WIRE("the cable's rating, heat_rated", Phrase.CAUTION_HEAT),
    WIRE_AMPS("the adopted code, amps_limit", Phrase.CAUTION_HEAT),
    CLAD("ISO/IEC 11801, TIA-568", Phrase.CAUTION_HEAT),
    THIN_CABLE(Sources.CABLING, Firm.NO),
    CORD(Sources.CABLING, Firm.NO),
    REACH(Sources.CABLING, Firm.NO),
    // data
    HOPS(Sources.PRACTICE, Firm.NO),
    HOPS_PORT(Sources.PRACTICE, Firm.NO),
    LINK(Sources.PRACTICE, Firm.NO),
    // the site
    INGRESS("IEC 60529", Firm.NO),
    TOO_COLD("the maker's range", Firm.NO),
    TOO_HOT("the maker's range", Firm.NO),
    SHEATH(Sources.PRACTICE, Firm.NO),
    // what only needs a look; a plan may raise it
    CLIFF("maximum power transfer; practice, editable", Firm.NO),
    DEMOTED(Sources.STANDARD, Firm.NO),
    HOLD(Sources.STANDARD, Firm.NO),
    PASSIVE("no standard", Phrase.CAUTION_PASSIVE),
    PASSIVE_CLASS(Sources.STANDARD, Firm.NO),
    START_WAVES(Sources.PRACTICE, Firm.NO),
    RISE("our calibration; practice, editable", Firm.NO),
    BETWEEN(Sources.PRACTICE, Phrase.CAUTION_OUTSIDE),
    SURGE(Sources.PRACTICE, Phrase.CAUTION_OUTSIDE),
    INGRESS_OTHER("IEC 60529", Firm.NO),
    INGRESS_UNSAID("IEC 60529", Firm.NO),
    INGRESS_UNREAD("IEC 60529", Firm.NO),
    SHEATH_UNSAID(Sources.PRACTICE, Firm.NO),
    READING_OFF(Sources.PRACTICE, Firm.NO),
    PRACTICE_UNKNOWN("", Firm.NO),
    CHOICE_FIRM("", Firm.NO),
    CHOICE_UNSOUND("", Firm.NO),
    // good to know
    LABEL(Sources.LIMITS, Firm.NO),
    CODE_TABLE("practice, editable; check against the adopted code", Firm.NO),
    BUNDLE(Sources.PRACTICE, Firm.NO),
    REACH_TABLE(Sources.CABLING, Firm.NO),
    LENGTH_UNSAID(Sources.CABLING, Firm.NO),
    HOPS_MANY(Sources.PRACTICE, Firm.NO),
    BONDING(Sources.PRACTICE, Phrase.CAUTION_OUTSIDE),
    SHEATH_INSIDE(Sources.PRACTICE, Firm.NO),
    CROSSES(Sources.PRACTICE, Firm.NO),
    START_AT_ONCE(Sources.PRACTICE, Firm.NO),
    READING_UNSURE(Sources.PRACTICE, Firm.NO),
    PRACTICE_NO_REASON("", Firm.NO);

    /** Whether a plan may silence it. */
    private enum Firm {
        YES,
        NO
    }

    private final String source;
    private final Firm firm;
    private final Optional<Phrase> caution;

    ReviewCode(String source, Firm firm) {
        this.source = source;
        this.firm = firm;
        this.caution = Optional.empty();
    }

    ReviewCode(String source, Phrase caution) {
        this(source, Firm.NO, caution);
    }

    ReviewCode(String source, Firm firm, Phrase caution) {
        this.source = source;
        this.firm = firm;
        this.caution = Optional.of(caution);
    }

    @Override
    public String room() {
        return "review";
    }

    /** Where the limit comes from. */
    public String source() {
        return source;
    }

    /** True for what no plan can silence or lower: without it there is no answer to judge. */
    public boolean isFirm() {
        return firm == Firm.YES;
    }

    /** What to mind where someone can be hurt. */
    Optional<Phrase> caution() {
        return caution;
    }

    /** Sources that several share. */
    private static final class Sources {
        static final String STANDARD = "IEEE 802.3 clauses 33 and 145";
        static final String LIMITS = "maximum power transfer; the limits as filled in";
        static final String PRACTICE = "practice, editable";
        static final String CABLING = "ISO/IEC 11801, TIA-568; practice, editable";
    }
}
