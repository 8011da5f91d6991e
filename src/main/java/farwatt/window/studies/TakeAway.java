package farwatt.window.studies;

import farwatt.picture.Chart;
import farwatt.picture.Palette;
import farwatt.picture.Picture;
import farwatt.picture.PictureFile;
import farwatt.quantity.Unit;
import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.report.Place;
import farwatt.window.WindowCode;
import farwatt.window.grid.TabText;
import farwatt.window.work.Work;
import farwatt.workbook.Column;
import farwatt.workbook.CsvOut;
import farwatt.workbook.Entry;
import farwatt.workbook.Form;
import farwatt.workbook.Schedule;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;

/** Takes results elsewhere: to files and to the clipboard, worked out away from the window. */
final class TakeAway {
    private final Work work;
    private final Consumer<Notice> say;

    TakeAway(Work work, Consumer<Notice> say) {
        this.work = work;
        this.say = say;
    }

    /** On paper a picture has the basis under its title, since there nothing else says it. */
    private static Picture onPaper(Chart chart, Basis basis) {
        return chart.captioned(Messages.text(StudiesCode.BASIS, basis.text())).picture(Palette.LIGHT);
    }

    void picture(Chart chart, Basis basis, Path target) {
        work.start(
                "Picture",
                (progress, cancel) -> {
                    PictureFile.write(onPaper(chart, basis), target);
                    return target;
                },
                this::written);
    }

    void table(StudyResult result, Path target) {
        work.start(
                "Table",
                (progress, cancel) -> {
                    CsvOut.write(target, schedule(result), cancel);
                    return target;
                },
                this::written);
    }

    private void written(Work.End<Path> end) {
        say.accept(
                end instanceof Work.End.Not<Path> not
                        ? not.notice()
                        : Notice.of(Level.NOTE, WindowCode.WRITTEN, Place.NONE, ((Work.End.Done<Path>) end).result()));
    }

    private static Schedule schedule(StudyResult result) {
        StudyTable table = result.table();
        List<Column> columns = new ArrayList<>();
        for (int c = 0; c < table.headings().size(); c++) {
            Unit unit = table.unit(c);
            columns.add(Column.of("c" + c, table.headings().get(c), Form.FREE).in(unit.symbol()));
        }
        Schedule.Lines lines = new Schedule.Lines() {
            @Override
            public int size() {
                return table.size();
            }

            @Override
            public List<Entry> at(int line) {
                List<Entry> entries = new ArrayList<>();
                for (int c = 0; c < table.headings().size(); c++) {
                    OptionalDouble number = table.number(line, c);
                    boolean none = table.text(line, c).equals("–");
                    entries.add(
                            number.isPresent()
                                    ? Entry.number(number.getAsDouble())
                                    : none ? Entry.NONE : Entry.words(table.text(line, c)));
                }
                return entries;
            }
        };
        return new Schedule(result.kind().question(), "", columns, lines);
    }

    void copyTable(StudyResult result) {
        StudyTable table = result.table();
        work.start(
                "Table",
                (progress, cancel) -> {
                    List<List<String>> rows = new ArrayList<>(List.of(table.headings()));
                    for (int r = 0; r < table.size(); r++) {
                        cancel.check();
                        List<String> cells = new ArrayList<>();
                        for (int c = 0; c < table.headings().size(); c++) {
                            cells.add(table.text(r, c));
                        }
                        rows.add(cells);
                    }
                    return TabText.write(rows);
                },
                end -> copied(end, "the table", (content, text) -> content.putString(text)));
    }

    void copyPicture(Chart chart, Basis basis) {
        work.start(
                "Picture",
                (progress, cancel) -> PictureFile.image(onPaper(chart, basis)),
                end -> copied(end, "the picture", (content, image) -> content.putImage(window(image))));
    }

    /** Puts something into what goes to the clipboard. */
    private interface Putting<T> {
        void put(ClipboardContent content, T what);
    }

    private <T> void copied(Work.End<T> end, String what, Putting<T> putting) {
        if (end instanceof Work.End.Not<T> not) {
            say.accept(not.notice());
            return;
        }
        ClipboardContent content = new ClipboardContent();
        putting.put(content, ((Work.End.Done<T>) end).result());
        Clipboard.getSystemClipboard().setContent(content);
        say.accept(Notice.of(Level.NOTE, StudiesCode.COPIED, Place.NONE, what));
    }

    /** An image of the drawing's kind as one of the window's. */
    private static WritableImage window(BufferedImage image) {
        int wide = image.getWidth();
        int high = image.getHeight();
        int[] pixels = image.getRGB(0, 0, wide, high, new int[wide * high], 0, wide);
        WritableImage copy = new WritableImage(wide, high);
        copy.getPixelWriter().setPixels(0, 0, wide, high, PixelFormat.getIntArgbInstance(), pixels, 0, wide);
        return copy;
    }
}
