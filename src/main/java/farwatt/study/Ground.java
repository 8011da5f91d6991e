package farwatt.study;

import farwatt.engine.Answer;
import farwatt.engine.Calculation;
import farwatt.engine.Corner;
import farwatt.engine.Value;
import farwatt.language.Marked;
import farwatt.language.Problem;
import farwatt.language.Type;
import farwatt.plan.Plan;
import farwatt.quantity.Units;
import farwatt.report.Refusal;
import java.util.ArrayList;
import java.util.List;

/**
 * What a study starts from: a plan (base, or a scenario already written into it) in one corner. Holds a calculation of
 * its own, so confined to one thread; studies that run on several make more of them.
 */
public final class Ground {
    private final Plan plan;
    private final Corner corner;
    private final Calculation calculation;

    private Ground(Plan plan, Corner corner) {
        this.plan = plan;
        this.corner = corner;
        calculation = Calculation.of(plan);
        calculation.look(corner);
    }

    public static Ground of(Plan plan, Corner corner) {
        return new Ground(plan, corner);
    }

    /** A plan in the corner that it names itself. */
    public static Ground of(Plan plan) {
        return of(plan, Corner.of(plan.settings().text("corner")).orElse(Corner.MOST));
    }

    public Plan plan() {
        return plan;
    }

    public Corner corner() {
        return corner;
    }

    Calculation calculation() {
        return calculation;
    }

    Units units() {
        return new Units(plan.currency());
    }

    /**
     * What expressions give here, as headings of columns.
     *
     * @throws Refusal if one cannot be understood, with the place marked
     */
    List<Heading> headings(List<String> reads) throws Refusal {
        List<Heading> headings = new ArrayList<>();
        for (String read : reads) {
            Value value = ask(read);
            headings.add(new Heading(read.strip(), value.type(), value.unit()));
        }
        return headings;
    }

    /**
     * The value of an expression as things stand.
     *
     * @throws Refusal if it cannot be understood, with the place marked
     */
    Value ask(String text) throws Refusal {
        Answer answer = calculation.ask(text);
        if (answer.value().isPresent()) {
            return answer.value().get();
        }
        Problem problem = answer.problems().get(0);
        throw Refusal.of(StudyCode.NOT_UNDERSTOOD, problem.text(), Marked.show(text, problem.span()));
    }

    /**
     * The same for a condition.
     *
     * @throws Refusal if it cannot be understood or answers anything but yes or no
     */
    Value condition(String text) throws Refusal {
        Value value = ask(text);
        if (value.type() != Type.Plain.YES_NO) {
            throw Refusal.of(StudyCode.NO_CONDITION, text.strip());
        }
        return value;
    }
}
