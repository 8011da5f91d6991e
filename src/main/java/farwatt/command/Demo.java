package farwatt.command;

import farwatt.engine.Calculation;
import farwatt.file.Opened;
import farwatt.file.PlanReader;
import farwatt.report.Messages;
import farwatt.report.Refusal;
import farwatt.review.Review;
import farwatt.review.Reviewer;
import java.io.IOException;
import java.io.InputStream;

/** What a call without a verb shows: the demo plan's verdict, and its hand-over workbook beside the jar. */
final class Demo {
    private static final String PLAN = "ferry-landing.farwatt.json";

    private Demo() {}

    static int run(Output output) throws IOException, Refusal {
        Opened opened = PlanReader.read(bytes(), PLAN);
        Calculation calculation = Calculation.of(opened.plan());
        Review review = Reviewer.review(calculation);
        CheckVerb.text(output, calculation, review, review.findings());
        output.line("");
        output.line(Messages.text(CommandCode.DEMO_END));
        return Exit.DONE;
    }

    private static byte[] bytes() throws IOException {
        try (InputStream in = Demo.class.getResourceAsStream("/farwatt/scenarios/" + PLAN)) {
            if (in == null) {
                throw new IllegalStateException("no demo plan");
            }
            return in.readAllBytes();
        }
    }
}
