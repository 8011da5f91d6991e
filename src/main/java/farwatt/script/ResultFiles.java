package farwatt.script;

import farwatt.picture.Palette;
import farwatt.picture.PictureFile;
import farwatt.quantity.Unit;
import farwatt.report.Cancel;
import farwatt.report.Progress;
import farwatt.report.Refusal;
import farwatt.workbook.Column;
import farwatt.workbook.CsvOut;
import farwatt.workbook.Entry;
import farwatt.workbook.Form;
import farwatt.workbook.Imprint;
import farwatt.workbook.Schedule;
import farwatt.workbook.Workbook;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Saves what scripts made into one folder that a person chose; a script can reach no other. Any thread. */
public final class ResultFiles {
    /** The endings a table can be saved with. */
    public static final List<String> ENDINGS = List.of("csv", "xlsx");

    /** The endings a picture can be saved with. */
    public static final List<String> PICTURES = List.of("png", "svg");

    private static final int LONGEST = 120;
    /** Names that are no files on some systems, whatever comes after the point. */
    private static final Pattern DEVICE =
            Pattern.compile("(con|prn|aux|nul|com[0-9]|lpt[0-9]) *(\\..*)?", Pattern.CASE_INSENSITIVE);

    private final Path folder;
    private final Imprint imprint;

    /** @param imprint what every page of a workbook says of where it comes from */
    public ResultFiles(Path folder, Imprint imprint) {
        this.folder = folder;
        this.imprint = imprint;
    }

    /**
     * Saves a table.
     *
     * @return where it is
     * @throws Refusal if the name is none or the file cannot be written
     */
    public Path save(String name, ResultTable table) throws Refusal {
        if (!isPlain(name) || !ENDINGS.contains(ending(name))) {
            throw Refusal.of(ScriptCode.FILE_NAME, Shown.shortened(name));
        }
        Path target = folder.resolve(name);
        Schedule schedule = schedule(name, table);
        if (ending(name).equals("csv")) {
            CsvOut.write(target, schedule, new Cancel());
        } else {
            Workbook.write(target, List.of(schedule), imprint, Progress.SILENT, new Cancel());
        }
        return target;
    }

    /**
     * Saves a picture in the colours of print.
     *
     * @param name a plain file name with one of the endings in {@link #PICTURES}
     * @return where it is
     * @throws Refusal if the name is none, the picture cannot be drawn or the file cannot be written
     */
    public Path save(String name, ResultPicture picture) throws Refusal {
        if (!isPlain(name) || !PICTURES.contains(ending(name))) {
            throw Refusal.of(ScriptCode.FILE_NAME, name);
        }
        Path target = folder.resolve(name);
        PictureFile.write(ResultPictures.of(picture, imprint.title(), Palette.LIGHT), target);
        return target;
    }

    /** A name for a picture that was given none. */
    public static String named(ResultPicture picture) {
        String plain = picture.column().replaceAll("[^\\p{L}\\p{N}._]+", " ").strip();
        String some = plain.isEmpty() || !Character.isLetterOrDigit(plain.codePointAt(0)) ? "picture" : plain;
        return some.substring(0, Math.min(some.length(), LONGEST / 2)) + ".png";
    }

    /** The name if it is a plain one with an ending for tables. */
    static String checked(String name) {
        return checked(name, ENDINGS);
    }

    static String checkedPicture(String name) {
        return checked(name, PICTURES);
    }

    private static String checked(String name, List<String> endings) {
        if (!isPlain(name)) {
            throw ScriptFailure.of(ScriptCode.FILE_NAME, Shown.shortened(name));
        }
        if (!endings.contains(ending(name))) {
            throw ScriptFailure.of(ScriptCode.FILE_ENDING, Shown.shortened(name), String.join(", ", endings));
        }
        return name;
    }

    /** A name that means the same file on every system, and no other folder. */
    private static boolean isPlain(String name) {
        return !name.isEmpty()
                && name.length() <= LONGEST
                && Character.isLetterOrDigit(name.codePointAt(0))
                && !DEVICE.matcher(name).matches()
                && name.codePoints().allMatch(c -> Character.isLetterOrDigit(c) || " ._-+,()".indexOf(c) >= 0);
    }

    private static String ending(String name) {
        return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }

    private static Schedule schedule(String name, ResultTable table) {
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < table.columns().size(); i++) {
            ResultTable.Column column = table.columns().get(i);
            int at = i;
            boolean words = table.rows().stream().anyMatch(row -> isWords(row.get(at)));
            Form form = words ? Form.WORD : form(table, i);
            Column made = Column.of(column.name(), column.name(), form);
            columns.add(form == Form.SHARE ? made : made.in(column.unit().symbol()));
        }
        List<List<Entry>> lines =
                table.rows().stream().map(row -> entries(table, row, columns)).toList();
        String title = table.title().isEmpty() ? name.substring(0, name.lastIndexOf('.')) : table.title();
        return new Schedule(title, "", columns, Schedule.Lines.of(lines));
    }

    private static boolean isWords(ResultTable.Cell cell) {
        return cell instanceof ResultTable.Words || cell instanceof ResultTable.YesNo;
    }

    private static Form form(ResultTable table, int column) {
        Unit unit = table.columns().get(column).unit();
        boolean whole = table.rows().stream()
                .allMatch(row -> !(row.get(column) instanceof ResultTable.Amount amount)
                        || unit.fromInside(amount.inside()) == Math.rint(unit.fromInside(amount.inside())));
        Form form = Form.of(unit);
        return whole && form == Form.FREE ? Form.WHOLE : form;
    }

    private static List<Entry> entries(ResultTable table, List<ResultTable.Cell> row, List<Column> columns) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            Unit unit = table.columns().get(i).unit();
            if (row.get(i) instanceof ResultTable.Amount amount) {
                boolean share = columns.get(i).form() == Form.SHARE;
                entries.add(Entry.number(share ? amount.inside() : unit.fromInside(amount.inside())));
            } else if (row.get(i) instanceof ResultTable.None) {
                entries.add(Entry.NONE);
            } else {
                entries.add(
                        Entry.words(ResultTable.text(row.get(i), table.columns().get(i))));
            }
        }
        return entries;
    }
}
