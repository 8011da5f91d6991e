package farwatt.workbook;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Name;
import farwatt.engine.Calculation;
import farwatt.engine.EngineCode;
import farwatt.engine.Value;
import farwatt.plan.Table;
import farwatt.quantity.Unit;
import farwatt.quantity.Units;
import farwatt.report.Messages;
import java.util.ArrayList;
import java.util.List;

/**
 * The figures by which readings are judged, as a table that the test sheet's formulas look into, so that a person may
 * change them. In the order of the table's lines.
 */
enum Judging {
    VOLTS_ERROR("seen_volts_error"),
    AMPS_ERROR("seen_amps_error"),
    MODEL_ERROR("seen_model_error"),
    DROP_LEAST("seen_drop_least"),
    SPREAD_MOST("seen_spread_most"),
    FAR_LESS("seen_far_less"),
    LESS("seen_less"),
    MORE("seen_more"),
    MUCH_MORE("seen_much_more"),
    MOST("seen_most"),
    HALF_LOW("seen_half_low"),
    HALF_HIGH("seen_half_high");

    static final String FEW_VOLTS = "No judgement: too few volts are lost. Read again under more load.";
    static final String UNSURE = "No judgement: the readings are too uncertain. Read again under more load.";

    private final String constant;

    Judging(String constant) {
        this.constant = constant;
    }

    /** How a formula names its cell. */
    String cell() {
        return "{" + Titles.JUDGING + "!value@" + ordinal() + "}";
    }

    /** Its value in the plan. */
    double of(Calculation calc) {
        return value(calc).inside();
    }

    private Value value(Calculation calc) {
        for (int place = 0; place < calc.rows(Table.PRACTICE); place++) {
            if (calc.id(Table.PRACTICE, place).equals(constant)) {
                return calc.value(Table.PRACTICE, place, "is");
            }
        }
        throw new IllegalStateException("no constant " + constant);
    }

    static Schedule table(Calculation calc) {
        Units units = new Units(calc.plan().currency());
        List<List<Entry>> lines = new ArrayList<>();
        for (Judging one : values()) {
            Value value = one.value(calc);
            Name name = Catalogue.need(Table.PRACTICE, one.constant);
            Unit unit = units.need(name.kind().symbol(units));
            Form form = Form.of(unit);
            lines.add(List.of(
                    Entry.words(one.constant.replace('_', ' ')),
                    Entry.number(Figure.number(value.inside(), unit)).as(form == Form.FREE ? Form.TWO : form),
                    Entry.words(Figure.unit(unit)),
                    Entry.words(name.sentence()),
                    Entry.words(name.source())));
        }
        return new Schedule(
                Titles.JUDGING,
                "The test sheet looks here. A ratio is the loop read over the loop to expect at that temperature.",
                List.of(
                        Column.of("name", "figure", Form.WORD),
                        Column.of("value", "value", Form.TWO),
                        Column.of("unit", "unit", Form.WORD),
                        Column.of("sentence", "what it means", Form.PARAGRAPH),
                        Column.of("source", "rests on", Form.SENTENCE)),
                Schedule.Lines.of(lines));
    }

    /** The verdict on a ratio, as a formula over the cells {drop}, {spread}, {ratio} and {pairs}. */
    static String verdict() {
        String high = choice("{ratio}<=" + MORE.cell(), said(EngineCode.SEEN_OFF), more());
        String low = choice("{ratio}<" + LESS.cell(), said(EngineCode.SEEN_LESS), high);
        String band = choice("{ratio}<" + FAR_LESS.cell(), said(EngineCode.SEEN_FAR_LESS), low);
        String expected = choice("ABS({ratio}-1)<=2*{spread}", said(EngineCode.SEEN_EXPECTED), band);
        String unsure = choice("{spread}>" + SPREAD_MOST.cell(), text(UNSURE), expected);
        String few = choice("{r_near}-{r_far}<" + DROP_LEAST.cell(), text(FEW_VOLTS), unsure);
        return choice("ISNUMBER({ratio})", few, "\"\"");
    }

    private static String more() {
        String half = "AND({pairs}=4,{ratio}>=" + HALF_LOW.cell() + ",{ratio}<=" + HALF_HIGH.cell() + ")";
        String most = choice(half, said(EngineCode.SEEN_HALF), said(EngineCode.SEEN_MOST));
        String much = choice("{ratio}<=" + MOST.cell(), said(EngineCode.SEEN_MUCH_MORE), most);
        return choice("{ratio}<=" + MUCH_MORE.cell(), said(EngineCode.SEEN_MORE), much);
    }

    private static String choice(String condition, String then, String otherwise) {
        return "IF(" + condition + "," + then + "," + otherwise + ")";
    }

    private static String said(EngineCode code) {
        return text(Messages.text(code));
    }

    private static String text(String words) {
        return "\"" + words.replace("\"", "\"\"") + "\"";
    }
}
