package farwatt.script;

import farwatt.engine.Value;
import farwatt.language.Type;
import farwatt.plan.Scenario;
import farwatt.quantity.Units;
import farwatt.report.Messages;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.graalvm.polyglot.PolyglotException;
import org.graalvm.polyglot.proxy.ProxyArray;
import org.graalvm.polyglot.proxy.ProxyExecutable;
import org.graalvm.polyglot.proxy.ProxyObject;

/**
 * The functions that the program offers to the objects of a script; the whole of what a script can reach. What is
 * handed over is looked at here and never kept.
 */
final class Offered {
    private final Console console;
    private final WorkingPlan working;
    private final Map<String, Object> members = new HashMap<>();
    private org.graalvm.polyglot.@org.jspecify.annotations.Nullable Value throwing;

    private Offered(WorkingPlan working, Console console) {
        this.working = working;
        this.console = console;
    }

    /** The functions as members of one object. */
    static ProxyObject of(WorkingPlan working, List<String> arguments, Console console) {
        Offered offered = new Offered(working, console);
        offered.members.put("plan", working);
        offered.members.put("args", ProxyArray.fromList(List.copyOf(arguments)));
        offered.asking();
        offered.changing();
        offered.saying();
        return ProxyObject.fromMap(offered.members);
    }

    /** A function over handed-over values; a missing one is undefined. */
    private interface Body {
        Object of(Arguments arguments);
    }

    private record Arguments(List<org.graalvm.polyglot.Value> all) {
        WorkingPlan plan() {
            return all.get(0).asProxyObject();
        }

        org.graalvm.polyglot.Value at(int place) {
            return all.get(place);
        }

        Optional<org.graalvm.polyglot.Value> maybe(int place) {
            return place < all.size() && !all.get(place).isNull() ? Optional.of(all.get(place)) : Optional.empty();
        }

        String text(int place, String what) {
            if (place >= all.size()) {
                throw ScriptFailure.of(ScriptCode.NO_TEXT, what, "nothing");
            }
            return Handed.text(all.get(place), what);
        }
    }

    private void offer(String name, Body body) {
        ProxyExecutable function = values -> {
            try {
                return body.of(new Arguments(List.of(values)));
            } catch (ScriptFailure e) {
                throw failed(e.sentence());
            } catch (ClassCastException | IllegalArgumentException | UnsupportedOperationException e) {
                throw failed(Messages.text(ScriptCode.BUG, e.getClass().getSimpleName()));
            }
        };
        members.put(name, function);
    }

    /** Goes through the script's own way of throwing, so that it can be caught there and knows its line. */
    private RuntimeException failed(String sentence) {
        org.graalvm.polyglot.Value way = throwing;
        if (way == null) {
            return new IllegalStateException(sentence);
        }
        try {
            way.executeVoid(sentence);
        } catch (PolyglotException e) {
            return e;
        }
        return new IllegalStateException(sentence);
    }

    private void asking() {
        offer("get", a -> get(a.plan(), a.text(1, "plan.get"), a.maybe(2)));
        offer("text", a -> Asking.value(a.plan(), a.text(1, "plan.text")).text());
        offer("explain", a -> Asking.explain(a.plan(), a.text(1, "plan.explain")));
        offer("rows", a -> Asking.rows(a.plan(), Adding.table(a.text(1, "plan.rows"))));
        offer("findings", a -> Asking.findings(a.plan(), level(a.maybe(1))));
        offer("verdict", a -> Asking.verdict(a.plan()));
        offer("scenario", a -> a.plan().with(a.text(1, "plan.scenario")));
        offer("asked", a -> a.text(0, "span") + " .. " + a.text(1, "span") + " by " + a.text(2, "span"));
        offer("study", a -> Studying.study(a.plan(), a.text(1, "a study"), a.at(2), console));
    }

    private static Object get(WorkingPlan plan, String expression, Optional<org.graalvm.polyglot.Value> otherwise) {
        if (otherwise.isPresent()) {
            Value value = Asking.value(plan, expression);
            return value.isPresent() ? plain(value) : otherwise.get();
        }
        return plain(Asking.present(plan, expression));
    }

    private static Object plain(Value value) {
        if (value.type() == Type.Plain.YES_NO) {
            return value.inside() != 0;
        }
        return value.isNumber() ? (Object) value.inside() : value.words();
    }

    private static String level(Optional<org.graalvm.polyglot.Value> filter) {
        if (filter.isEmpty()) {
            return "";
        }
        Handed.check(filter.get(), "plan.findings", List.of("level"));
        return Handed.member(filter.get(), "level")
                .map(level -> Handed.text(level, "level"))
                .orElse("");
    }

    private void changing() {
        offer("set", a -> {
            a.plan().set(a.text(1, "plan.set"), a.at(2));
            return true;
        });
        offer("add", a -> {
            Adding.add(a.plan(), a.text(1, "plan.add"), a.at(2), a.maybe(3));
            return true;
        });
        offer("drop", a -> {
            a.plan().drop(a.text(1, "plan.drop"));
            return true;
        });
        offer("keep", a -> {
            console.keep(a.plan().keep(a.text(1, "keep")));
            return true;
        });
        offer("apply", a -> {
            if (!a.plan().on().isEmpty()) {
                throw ScriptFailure.of(ScriptCode.APPLY_ON_SCENARIO, a.plan().on());
            }
            console.propose(new Scenario("script", "", a.plan().changes()));
            return true;
        });
    }

    private void saying() {
        offer("throwing", a -> {
            throwing = a.at(0);
            return true;
        });
        offer("print", a -> {
            console.print(a.at(0).asString());
            return true;
        });
        offer("show", a -> {
            console.table(Results.table(a.at(0), units()));
            return true;
        });
        offer("save", a -> {
            console.save(a.text(1, "save"), Results.table(a.at(0), units()));
            return true;
        });
        offer("picture", a -> {
            ResultTable table = Results.table(a.at(0), units());
            String column = a.text(1, "picture");
            Results.checkColumn(table, column);
            Optional<String> file = a.maybe(2).map(name -> Handed.text(name, "picture"));
            console.picture(Results.picture(a.at(0), table, column, file));
            return true;
        });
        offer("unknown", a -> {
            String key = a.at(1).asString();
            List<String> known = a.all().stream().skip(2).map(v -> v.asString()).toList();
            throw ScriptFailure.of(ScriptCode.NO_MEMBER, a.at(0).asString(), key, Near.hint(key, known));
        });
    }

    private Units units() {
        return new Units(working.plan().currency());
    }
}
