package farwatt.window.frame;

import farwatt.engine.Calculation;
import farwatt.engine.Still;
import farwatt.picture.Diagram;
import farwatt.picture.DiagramPicture;
import farwatt.picture.Heading;
import farwatt.picture.Palette;
import farwatt.picture.PictureFile;
import farwatt.plan.Plan;
import farwatt.report.Build;
import farwatt.report.Level;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.review.Remedies;
import farwatt.review.Reviewer;
import farwatt.window.WindowCode;
import farwatt.window.work.Work;
import farwatt.workbook.Handover;
import farwatt.workbook.Paper;
import farwatt.workbook.SideTables;
import farwatt.workbook.Workbook;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes the hand-over workbook, away from the window. */
final class HandOver {
    private static final String ENDING = ".xlsx";

    private final Frame frame;
    private final FileDoings files;
    private final Work work;
    private final Asking asking;

    HandOver(Frame frame, FileDoings files, Work work, Asking asking) {
        this.frame = frame;
        this.files = files;
        this.work = work;
        this.asking = asking;
    }

    void workbook() {
        asking.save("Hand-over workbook", files.suggested(ENDING), List.of(ENDING))
                .ifPresent(this::write);
    }

    void picture() {
        frame.desk()
                .still()
                .ifPresent(still -> asking.save("Diagram", files.suggested(".png"), List.of(".png", ".svg"))
                        .ifPresent(target -> picture(still, target)));
    }

    private void picture(Still still, Path target) {
        Diagram diagram = frame.diagram().diagram();
        Optional<String> scenario = Optional.of(frame.desk().scenario()).filter(id -> !id.isEmpty());
        Heading heading = Heading.of(still, frame.desk().review(), scenario, Optional.of(today()));
        work.start(
                "Picture",
                (progress, cancel) -> {
                    PictureFile.write(new DiagramPicture(diagram, heading, Palette.LIGHT), target);
                    return target;
                },
                this::written);
    }

    private static LocalDate today() {
        return LocalDate.now(ZoneId.systemDefault());
    }

    private void written(Work.End<Path> end) {
        frame.say(
                end instanceof Work.End.Not<Path> not
                        ? not.notice()
                        : Notice.of(Level.NOTE, WindowCode.WRITTEN, Place.NONE, ((Work.End.Done<Path>) end).result()));
    }

    private void write(Path chosen) {
        String name = String.valueOf(chosen.getFileName());
        Path target = name.toLowerCase(Locale.ROOT).endsWith(ENDING) ? chosen : chosen.resolveSibling(name + ENDING);
        Plan plan = frame.desk().shown();
        Plan base = frame.desk().base();
        String scenario = frame.desk().scenario();
        String fingerprint = frame.file().fingerprint().hex();
        work.start(
                "Workbook",
                (progress, cancel) -> {
                    Calculation calculation = Calculation.of(plan);
                    Handover handover = new Handover(
                            calculation,
                            Remedies.of(calculation, Reviewer.review(calculation, cancel), progress, cancel),
                            Optional.of(scenario).filter(id -> !id.isEmpty()),
                            Build.version(),
                            Optional.of(fingerprint).filter(hex -> !hex.isEmpty()),
                            today(),
                            Paper.of(Locale.getDefault().getCountry()),
                            SideTables.of(base, Optional.empty()));
                    return Workbook.write(target, handover.drawn(), progress, cancel);
                },
                end -> {
                    if (end instanceof Work.End.Done<List<Notice>> done) {
                        done.result().forEach(frame::say);
                        frame.say(Notice.of(Level.NOTE, WindowCode.WRITTEN, Place.NONE, target));
                    } else if (end instanceof Work.End.Not<List<Notice>> not) {
                        frame.say(not.notice());
                    }
                });
    }
}
