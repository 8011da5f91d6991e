package farwatt.window.studies;

import farwatt.picture.Chart;
import farwatt.picture.StudyCharts;
import farwatt.plan.Cell;
import farwatt.plan.Step;
import farwatt.quantity.Show;
import farwatt.quantity.Units;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import farwatt.study.Effect;
import farwatt.study.Effects;
import farwatt.study.Effort;
import farwatt.study.Fit;
import farwatt.study.Ground;
import farwatt.study.Grow;
import farwatt.study.Grown;
import farwatt.study.Heading;
import farwatt.study.Limit;
import farwatt.study.Limited;
import farwatt.study.Points;
import farwatt.study.Room;
import farwatt.study.Sensitivity;
import farwatt.study.Sides;
import farwatt.study.StudyCode;
import farwatt.study.Vary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The studies that go step by step. */
final class OneByOne {
    private static final int DIGITS = 6;

    private final StudyRun run;
    private final Ground ground;
    private final Effort effort;

    OneByOne(StudyRun run, Ground ground, Effort effort) {
        this.run = run;
        this.ground = ground;
        this.effort = effort;
    }

    StudyResult grow() throws Refusal {
        int most = (int) Math.min(Integer.MAX_VALUE, run.whole(StudyField.MOST, Grow.USUAL_MOST));
        String id = run.line(StudyField.COPY);
        Grow.until(ground, id, "yes", 1, Effort.quiet());
        String until = run.line(StudyField.UNTIL);
        List<String> sides = Sides.of(ground, until);
        Grow.until(ground, id, until, 1, sides, Effort.quiet());
        run.blame(StudyField.MOST, 0);
        Grown grown = Grow.until(ground, id, until, most, sides, effort);
        List<String> said = new ArrayList<>();
        said.add(Messages.text(StudiesCode.GROWN, grown.fitted(), id));
        said.add(grown.stoppedBy());
        grown.firstDark().ifPresent(at -> said.add(Messages.text(StudiesCode.FIRST_DARK, at, grown.darkId())));
        Points points = grown.points();
        Chart chart = StudyCharts.of(grown, id, "");
        return run.result(
                said,
                new GrownTable(grown, id),
                Charts.one(until, chart, rows(points.size(), 1)),
                List.of(run.sheets().grow(grown, id)));
    }

    private static List<Integer> rows(int size, int way) {
        return IntStream.range(0, size)
                .map(i -> way > 0 ? i : size - 1 - i)
                .boxed()
                .toList();
    }

    StudyResult limit() throws Refusal {
        String typed = run.line(StudyField.SPAN);
        Vary vary = Vary.of(ground, typed);
        String holds = run.line(StudyField.HOLDS);
        List<String> sides = Sides.of(ground, holds);
        Points points;
        Limited limited;
        try {
            limited = Limit.find(ground, vary, holds, effort);
            Optional<Points> along = Sides.along(ground, vary, holds, limited, effort);
            points = along.orElse(limited.points());
            int way = points.size() < 2 || points.inside(0, 0) <= points.inside(1, 0) ? 1 : -1;
            Chart chart = StudyCharts.of(limited, along, "");
            String figure = sides.isEmpty() ? holds : sides.get(0);
            return run.result(
                    said(limited),
                    new PointsTable(points, 1),
                    Charts.one(figure, chart, rows(points.size(), way)),
                    List.of(run.sheets().limit(points, String.join(" ", said(limited)))));
        } catch (Refusal e) {
            if (e.notice().code().equals(StudyCode.NO_SPAN.key())) {
                run.blame(StudyField.SPAN, 0);
            }
            throw e;
        }
    }

    private static List<String> said(Limited limited) {
        String name = limited.heading().name();
        List<String> said = new ArrayList<>();
        if (limited.farthest().isEmpty()) {
            said.add(Messages.text(StudiesCode.HOLDS_NOWHERE, name));
        } else if (limited.beyond().isEmpty()) {
            said.add(Messages.text(
                    StudiesCode.HOLDS_TO_END,
                    name,
                    shown(limited, limited.farthest().get())));
        } else {
            said.add(Messages.text(
                    StudiesCode.HOLDS_TO,
                    name,
                    shown(limited, limited.farthest().get()),
                    shown(limited, limited.beyond().get())));
        }
        if (!limited.monotonic()) {
            said.add(Messages.text(StudiesCode.NOT_STEADY));
        }
        return said;
    }

    private static String shown(Limited limited, double inside) {
        return Show.text(inside, limited.heading().unit(), DIGITS + 2);
    }

    StudyResult sensitivity() throws Refusal {
        double share = run.share(StudyField.STEP, new Units(ground.plan().currency()));
        String read = run.line(StudyField.READ);
        Effects effects = Sensitivity.of(ground, read, share, effort);
        Heading heading = effects.read();
        List<List<TextRows.Cell>> rows = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        for (Effect effect : effects.effects()) {
            rows.add(moved(heading, effect, effect.low(), effect.down()));
            rows.add(moved(heading, effect, effect.high(), effect.up()));
            steps.add(step(effect, effect.low()));
            steps.add(step(effect, effect.high()));
        }
        List<String> said = List.of(
                Messages.text(StudiesCode.AS_IT_IS, heading.name(), heading.text(effects.now())),
                Messages.text(StudiesCode.WITHOUT_EFFECT, effects.without()));
        List<String> headings = List.of("input", "now", "moved to", "gives");
        Chart chart = StudyCharts.of(effects, "");
        return run.result(
                said,
                new TextRows(headings, rows, steps),
                Charts.one(read, chart, rows(rows.size(), 1)),
                List.of(run.sheets().sensitivity(effects)));
    }

    private static List<TextRows.Cell> moved(Heading heading, Effect effect, double to, double gives) {
        Heading input = effect.input();
        return List.of(
                TextRows.Cell.words(input.name()),
                TextRows.Cell.words(input.text(effect.now())),
                TextRows.Cell.words(input.text(to)),
                TextRows.Cell.words(heading.text(gives)));
    }

    private static Step step(Effect effect, double to) {
        Heading input = effect.input();
        return new Step.Set(input.name(), Cell.text(Show.exact(to, input.unit())));
    }

    StudyResult room() {
        List<Fit> fits = Room.of(ground, effort);
        List<List<TextRows.Cell>> rows = new ArrayList<>();
        for (Fit fit : fits) {
            rows.add(List.of(
                    TextRows.Cell.words(fit.node()),
                    TextRows.Cell.words(fit.kind()),
                    TextRows.Cell.words(fit.pattern()),
                    TextRows.Cell.whole(fit.more()),
                    TextRows.Cell.whole(fit.ports()),
                    TextRows.Cell.words(fit.stoppedBy())));
        }
        long nodes = fits.stream().map(Fit::node).distinct().count();
        long free = fits.stream()
                .filter(fit -> fit.more() > 0)
                .map(Fit::node)
                .distinct()
                .count();
        String said =
                fits.isEmpty() ? Messages.text(StudiesCode.NO_ROOM) : Messages.text(StudiesCode.ROOM, free, nodes);
        List<String> headings = List.of("node", "kind", "as", "more", "free ports", "what stops one more");
        return run.result(
                List.of(said),
                new TextRows(headings, rows),
                Charts.none(),
                List.of(run.sheets().room(fits)));
    }
}
