package farwatt.window.why;

import farwatt.engine.Explanation;
import farwatt.plan.StepPath;
import farwatt.plan.Table;
import farwatt.review.Finding;
import farwatt.window.desk.Desk;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** What the side of reasons shows. */
public final class WhyModel {
    private final Desk desk;
    private long reviews = -1;
    private String expression = "";
    private String title = "";

    public WhyModel(Desk desk) {
        this.desk = desk;
    }

    /** Chooses a cell to be explained. */
    public void choose(Table table, String id, String name) {
        title = id.isEmpty() ? name : id + " · " + name;
        expression = expression(table, id, name);
    }

    /** How expressions name a cell; "" for cells that none can name. */
    static String expression(Table table, String id, String name) {
        if (table.isSite()) {
            return name.equals(table.idKey()) || id.isEmpty() ? "" : new StepPath(id, name).text();
        }
        if (table == Table.PLAN) {
            return "plan." + name;
        }
        boolean named = table == Table.VALUES || table == Table.PRACTICE;
        return named && name.equals("is") ? id : "";
    }

    /** What the derivation is of. */
    public String title() {
        return title;
    }

    /** Asks for the derivation of the chosen cell; the answer comes later and is empty where there is none. */
    public void ask(Consumer<Optional<Explanation>> answer) {
        String asked = expression;
        if (asked.isEmpty()) {
            answer.accept(Optional.empty());
            return;
        }
        desk.explain(asked, found -> {
            if (asked.equals(expression)) {
                answer.accept(found);
            }
        });
    }

    /** True if findings came in since this was asked last. */
    boolean hasNews() {
        boolean news = desk.reviews() != reviews;
        reviews = desk.reviews();
        return news;
    }

    /** What the review found, worst first. */
    public List<Finding> findings() {
        return desk.review().map(review -> review.findings()).orElse(List.of());
    }
}
