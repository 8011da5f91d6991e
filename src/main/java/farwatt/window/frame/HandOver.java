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
import farwatt.report.Cancel;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import farwatt.review.Remedies;
import farwatt.review.Review;
import farwatt.review.Reviewer;
import farwatt.window.WindowCode;
import farwatt.window.studies.StudyResult;
import farwatt.window.work.Work;
import farwatt.workbook.CsvOut;
import farwatt.workbook.Handover;
import farwatt.workbook.Paper;
import farwatt.workbook.SideTables;
import farwatt.workbook.StudyTable;
import farwatt.workbook.Workbook;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Writes the hand-over workbook, away from the window. */
final class HandOver {
    private static final String ENDING = ".xlsx";
    private static final List<String> ENDINGS = List.of(ENDING, ".csv");
    private static final double REMEDIES = 0.3;
    private static final double SIDES = 0.5;

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
        List<StudyResult> studies = studies();
        asking.pick("Hand-over workbook", Messages.text(WindowCode.WHICH_SHEETS), offers(studies))
                .ifPresent(picked -> asking.save("Hand-over workbook", files.suggested(ENDING), ENDINGS)
                        .ifPresent(target -> picked(target, studies, picked)));
    }

    /** Those that were put in, and the one that lies on the bench. */
    private List<StudyResult> studies() {
        List<StudyResult> all = new ArrayList<>(frame.studies().model().handedOver());
        frame.studies().model().result().filter(last -> !all.contains(last)).ifPresent(all::add);
        return all;
    }

    private List<Asking.Offer> offers(List<StudyResult> studies) {
        List<Asking.Offer> offers = new ArrayList<>();
        Handover.SHEETS.forEach(title -> offers.add(new Asking.Offer(title, Asking.Usual.IN)));
        List<StudyResult> in = frame.studies().model().handedOver();
        for (StudyResult study : studies) {
            String name = study.sheets().stream().map(StudyTable::title).collect(Collectors.joining(", "));
            Asking.Usual usual = in.contains(study) ? Asking.Usual.IN : Asking.Usual.OUT;
            String of = name + " (" + study.basis().text() + ")";
            boolean stale = frame.studies().model().isStale(study);
            offers.add(new Asking.Offer(stale ? Messages.text(WindowCode.STUDY_STALE, of) : of, usual));
        }
        return offers;
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

    private void picked(Path chosen, List<StudyResult> studies, List<Integer> picked) {
        int sheets = Handover.SHEETS.size();
        List<String> without = IntStream.range(0, sheets)
                .filter(i -> !picked.contains(i))
                .mapToObj(Handover.SHEETS::get)
                .toList();
        List<StudyTable> tables = picked.stream()
                .filter(i -> i >= sheets)
                .flatMap(i -> studies.get(i - sheets).sheets().stream())
                .toList();
        write(chosen, without, tables);
    }

    private void write(Path chosen, List<String> without, List<StudyTable> studies) {
        String name = String.valueOf(chosen.getFileName());
        boolean named = ENDINGS.stream().anyMatch(name.toLowerCase(Locale.ROOT)::endsWith);
        Path target = named ? chosen : chosen.resolveSibling(name + ENDING);
        Wanted wanted = new Wanted(
                frame.desk().shown(),
                frame.desk().base(),
                frame.desk().scenario(),
                frame.file().fingerprint().hex(),
                without,
                studies);
        work.start("Workbook", (progress, cancel) -> write(target, wanted, progress, cancel), end -> {
            if (end instanceof Work.End.Done<List<Notice>> done) {
                done.result().forEach(frame::say);
            } else if (end instanceof Work.End.Not<List<Notice>> not) {
                frame.say(not.notice());
            }
        });
    }

    /** What is to be written, as it was when someone asked for it. */
    private record Wanted(
            Plan plan,
            Plan base,
            String scenario,
            String fingerprint,
            List<String> without,
            List<StudyTable> studies) {}

    private static List<Notice> write(Path target, Wanted wanted, Progress progress, Cancel cancel) throws Refusal {
        Calculation calculation = Calculation.of(wanted.plan());
        Review found = Reviewer.review(calculation, cancel);
        Handover handover = new Handover(
                        calculation,
                        Remedies.of(calculation, found, progress.part(0, REMEDIES), cancel),
                        Optional.of(wanted.scenario()).filter(id -> !id.isEmpty()),
                        Build.version(),
                        Optional.of(wanted.fingerprint()).filter(hex -> !hex.isEmpty()),
                        today(),
                        Paper.of(Locale.getDefault().getCountry()))
                .drawn()
                .without(wanted.without())
                .beside(SideTables.of(wanted.base(), Optional.empty(), progress.part(REMEDIES, SIDES), cancel))
                .with(wanted.studies());
        Progress writing = progress.part(SIDES, 1);
        List<Notice> notices = new ArrayList<>();
        List<Path> written = List.of(target);
        if (CsvOut.isList(target)) {
            written = CsvOut.write(target, handover, writing, cancel);
        } else {
            notices.addAll(Workbook.write(target, handover, writing, cancel));
        }
        written.forEach(file -> notices.add(Notice.of(Level.NOTE, WindowCode.WRITTEN, Place.NONE, file)));
        return notices;
    }
}
