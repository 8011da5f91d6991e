package farwatt.intake;

import farwatt.report.Level;
import farwatt.report.Messages;
import farwatt.report.Notice;
import farwatt.report.Place;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;

/** Decides which sheets of a workbook are taken: the visible ones that read like lists of devices. */
final class SheetChoice {
    private static final String TAKE = "take";
    private static final String LEAVE = "leave out";
    private static final List<String> CHOICES = List.of(LEAVE, TAKE);

    private final Mapping mapping;
    /** Listings that are taken; sheets that are not → why. */
    private final List<Listing> taken = new ArrayList<>();

    private final IdentityHashMap<Listing, IntakeSays> left = new IdentityHashMap<>();
    private final List<Listing> all = new ArrayList<>();
    private final List<Question> questions = new ArrayList<>();
    private final List<Notice> notices = new ArrayList<>();

    SheetChoice(List<Sheet> sheets, Mapping mapping) {
        this.mapping = mapping;
        for (Sheet sheet : sheets) {
            if (!sheet.rows().isEmpty()) {
                Tables.of(sheet).forEach(table -> all.add(Listings.of(table, mapping)));
            }
        }
        choose();
        hidden(sheets);
    }

    private void choose() {
        boolean takeHidden = mapping.answer("hidden_sheets", LEAVE).equals(TAKE);

        for (Listing listing : all) {
            boolean shown = listing.sheet().shown() == Sheet.Shown.VISIBLE || takeHidden;
            if (!shown) {
                left.put(listing, IntakeSays.OUT_HIDDEN_SHEET);
            } else {
                decide(listing);
            }
        }
        if (taken.isEmpty()) {
            takeLargest();
        }
    }

    private void decide(Listing listing) {
        String name = label(listing);
        boolean copy = taken.stream().anyMatch(earlier -> Listings.isCopy(listing, earlier));
        boolean list = Listings.isList(listing) && !copy;
        boolean take = mapping.answer("sheet:" + name, list ? TAKE : LEAVE).equals(TAKE);
        if (take) {
            taken.add(listing);
        } else {
            left.put(listing, copy ? IntakeSays.OUT_COPY : IntakeSays.OUT_NO_LIST);
        }
        if (!list) {
            IntakeSays ask = copy ? IntakeSays.ASK_COPY : IntakeSays.ASK_SHEET;
            questions.add(new Question("sheet:" + name, Messages.text(ask, name), CHOICES, take ? TAKE : LEAVE));
        }
    }

    /** The sheet's name; of several tables on a sheet where each begins. */
    private String label(Listing listing) {
        String name = listing.sheet().name();
        long tables = all.stream().filter(l -> l.sheet().name().equals(name)).count();
        return tables == 1 ? name : listing.sheet().place(listing.sheet().rows().get(0));
    }

    /** Where nothing reads like a list, the visible sheet with the most rows is the likeliest. */
    private void takeLargest() {
        Listing largest = null;
        for (Listing listing : all) {
            boolean shown = left.get(listing) != IntakeSays.OUT_HIDDEN_SHEET;
            int rows = listing.sheet().rows().size();
            if (shown && (largest == null || rows > largest.sheet().rows().size())) {
                largest = listing;
            }
        }
        if (largest != null) {
            left.remove(largest);
            taken.add(largest);
            String key = "sheet:" + label(largest);
            questions.removeIf(q -> q.key().equals(key));
        }
    }

    /** What is hidden is said once, with what was done about it. */
    private void hidden(List<Sheet> sheets) {
        int rows = 0;
        int columns = 0;
        for (Listing listing : taken) {
            rows += (int) listing.sheet().rows().stream()
                    .filter(r -> r.look() == Look.HIDDEN)
                    .count();
            columns += (int) listing.sheet().hiddenColumns().stream()
                    .filter(c -> isUsed(listing.sheet(), c))
                    .count();
        }
        int hidden = (int)
                sheets.stream().filter(s -> s.shown() != Sheet.Shown.VISIBLE).count();
        ask("hidden_rows", IntakeSays.ASK_HIDDEN_ROWS, rows);
        ask("hidden_columns", IntakeSays.ASK_HIDDEN_COLUMNS, columns);
        ask("hidden_sheets", IntakeSays.ASK_HIDDEN_SHEETS, hidden);
        if (rows + columns + hidden > 0) {
            String text = counted(rows, "hidden row") + ", " + counted(columns, "hidden column") + ", "
                    + counted(hidden, "hidden sheet");
            notices.add(Notice.of(Level.WARN, IntakeSays.HIDDEN, Place.NONE, text));
        }
    }

    private void ask(String key, IntakeSays code, int count) {
        if (count > 0) {
            questions.add(new Question(key, Messages.text(code, count), CHOICES, mapping.answer(key, LEAVE)));
        }
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private static boolean isUsed(Sheet sheet, int column) {
        return sheet.rows().stream().anyMatch(row -> !row.cell(column).isBlank());
    }

    /** All sheets that have rows. */
    List<Listing> all() {
        return all;
    }

    boolean isTaken(Listing listing) {
        return !left.containsKey(listing);
    }

    /** Why a sheet is left out. */
    IntakeSays why(Listing listing) {
        return left.getOrDefault(listing, IntakeSays.OUT_NO_LIST);
    }

    /** How many sheets are taken. */
    int taken() {
        return taken.size();
    }

    List<Question> questions() {
        return questions;
    }

    List<Notice> notices() {
        return notices;
    }
}
