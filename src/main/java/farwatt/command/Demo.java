package farwatt.command;

import farwatt.engine.Calculation;
import farwatt.file.Opened;
import farwatt.file.PlanReader;
import farwatt.report.Cancel;
import farwatt.report.Messages;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import farwatt.review.Review;
import farwatt.review.Reviewer;
import farwatt.workbook.Handover;
import farwatt.workbook.SideTables;
import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** What a call without a verb shows: the demo plan's verdict, and its hand-over workbook beside the jar. */
final class Demo {
    private static final String PLAN = "ferry-landing.farwatt.json";
    private static final String WORKBOOK = "ferry-landing.xlsx";

    private Demo() {}

    static int run(Output output) throws IOException, Refusal {
        Opened opened = PlanReader.read(bytes(), PLAN);
        Calculation calculation = Calculation.of(opened.plan());
        Review review = Reviewer.review(calculation);
        CheckVerb.text(output, calculation, review, review.findings());
        Path target = beside().resolve(WORKBOOK);
        output.line("");
        Cancel cancel = new Cancel();
        Handover handover =
                WorkbookVerb.handover(calculation, "", opened.fingerprint().hex(), Progress.SILENT, cancel);
        WorkbookVerb.write(
                target,
                handover.beside(SideTables.of(opened.plan(), Optional.empty(), Progress.SILENT, cancel)),
                output,
                Progress.SILENT,
                cancel);
        output.say(Messages.text(CommandCode.WRITTEN, target));
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

    /** The folder of the jar; where there is none, or it cannot be written to, the current one. */
    private static Path beside() {
        try {
            Path code = Path.of(Demo.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            Path folder = code.toAbsolutePath().getParent();
            return folder != null && Files.isRegularFile(code) && Files.isWritable(folder) ? folder : Path.of("");
        } catch (URISyntaxException e) {
            return Path.of("");
        }
    }
}
