package farwatt.intake;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a row says about its cable: how long, which gauge, category and sheath. */
final class RowCable {
    private static final Pattern AWG = Pattern.compile("(?i)(?:^|\\D)(2[0-8])(?:/\\d+)?\\s*(?:awg|ga)?(?:$|\\D)");
    private static final Pattern AREA = Pattern.compile("(?i)(0[.,]\\d{1,3})\\s*(?:mm2|mm²|qmm)?");
    private static final Pattern CATEGORY =
            Pattern.compile("(?i)(?:cat(?:egory|\\.)?|kat\\.?|c)?\\s*-?(5e|6a|7a|5|6|7|8)(?:[^0-9a-z].*)?");
    private static final Pattern SCREEN =
            Pattern.compile("(?i).*\\b(?:s/?f?utp|s/?ftp|f/?utp|sf/?utp|f/?ftp|stp|screened|shielded|geschirmt)\\b.*");

    private static final Pattern SHEATH =
            Pattern.compile("(?i)\\b(indoor|outdoor|direct burial|buried|innen|außen|erdverlegt)\\b");

    /** Columns that say something about cable: nothing else of a row is looked at here. */
    static final List<Meaning> COLUMNS = List.of(
            Meaning.LENGTH, Meaning.CORD_LENGTH, Meaning.FIXED_LENGTH, Meaning.GAUGE, Meaning.CATEGORY, Meaning.SHEATH);

    private final Listing listing;
    private final RawRow row;
    private final Draft draft;

    RowCable(Listing listing, RawRow row, Draft draft) {
        this.listing = listing;
        this.row = row;
        this.draft = draft;
    }

    void read() {
        Length whole = length(Meaning.LENGTH);
        Length cord = length(Meaning.CORD_LENGTH);
        Length fixed = length(Meaning.FIXED_LENGTH);
        if (whole.text().isPresent()) {
            draft.run("length", whole.text().get());
            draft.understood(
                    new Understood("length", whole.text().get(), Source.TYPED, listing.text(row, Meaning.LENGTH)));
        } else if (fixed.metres().isPresent()) {
            fixed(fixed, cord);
        }
        cord.text().filter(t -> draft.run().has("length")).ifPresent(t -> draft.run("cord_length", t));
        gauge();
        category();
        sheath();
    }

    /** The fixed part alone: with cords beside it they add up to the whole run. */
    private void fixed(Length fixed, Length cord) {
        if (cord.metres().isPresent()) {
            BigDecimal sum = fixed.metres().orElseThrow().add(cord.metres().get());
            draft.run("length", PowerReader.plain(sum) + " m");
            draft.say(Remark.change(IntakeSays.WITH_CORDS, PowerReader.plain(sum) + " m"));
        } else {
            draft.run("length", fixed.text().orElseThrow());
            draft.say(Remark.change(IntakeSays.WITHOUT_CORDS, fixed.text().orElseThrow()));
        }
    }

    private Length length(Meaning meaning) {
        Optional<Column> column = listing.column(meaning);
        if (column.isEmpty()) {
            return Length.none(List.of());
        }
        Length read = LengthReader.read(row.cell(column.get().at()), column.get());
        draft.say(read.remarks());
        return read;
    }

    private void gauge() {
        String text = listing.text(row, Meaning.GAUGE);
        if (Cells.isMissing(text)) {
            return;
        }
        Matcher awg = AWG.matcher(text);
        Matcher area = AREA.matcher(text);
        if (area.matches()) {
            draft.run("gauge", area.group(1).replace(',', '.') + " mm2");
        } else if (awg.find()) {
            draft.run("gauge", awg.group(1) + " AWG");
        } else {
            draft.say(Remark.flag(IntakeSays.CELL_NOT_READ, "AWG", text));
        }
    }

    private void category() {
        String text = listing.text(row, Meaning.CATEGORY);
        if (Cells.isMissing(text)) {
            return;
        }
        Matcher m = CATEGORY.matcher(text);
        if (m.matches()) {
            String word = m.group(1);
            boolean plusA = word.length() > 1 && (word.charAt(1) == 'a' || word.charAt(1) == 'A');
            draft.run("category", plusA ? word.charAt(0) + "A" : Spelling.lower(word));
        } else {
            draft.say(Remark.flag(IntakeSays.CELL_NOT_READ, "category", text));
        }
        if (SCREEN.matcher(text).matches()) {
            draft.run("screened", "yes");
        }
        Matcher sheath = SHEATH.matcher(text);
        if (sheath.find()) {
            sheath(sheath.group(1));
        }
    }

    private void sheath() {
        String text = listing.text(row, Meaning.SHEATH);
        if (!Cells.isMissing(text)) {
            sheath(text);
        }
    }

    private void sheath(String text) {
        switch (Spelling.fold(text)) {
            case "indoor", "innen" -> draft.run("sheath", "indoor");
            case "outdoor", "aussen" -> draft.run("sheath", "outdoor");
            case "buried", "direct burial", "erdverlegt" -> draft.run("sheath", "buried");
            default -> draft.say(Remark.flag(IntakeSays.CELL_NOT_READ, "sheath", text));
        }
    }
}
