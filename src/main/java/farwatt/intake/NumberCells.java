package farwatt.intake;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.DateUtil;

/** A workbook's numbers as cells: what their number format makes of them counts, since that is what people see. */
final class NumberCells {
    /** Digits a sheet program keeps. */
    private static final MathContext KEPT = new MathContext(15, RoundingMode.HALF_EVEN);

    private static final Pattern PLAIN = Pattern.compile("\\d{1,30}");
    private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"");
    private static final Pattern PADDED = Pattern.compile("0{2,20}");
    private static final Pattern UNIT = Pattern.compile("^[#0.,?\\s]*0[#0.,?]*\\s*(?:\\\\ )?\"\\s*([^\"]{1,6})\"$");

    private static final int REMEMBERED = 8192;

    /** Numbers of no format that stand in many cells. */
    private final Map<String, RawCell> often = new HashMap<>();

    /** Which day the workbook counts its dates from. */
    private final Base base;

    /** The two date systems. */
    enum Base {
        B1900,
        B1904
    }

    NumberCells(Base base) {
        this.base = base;
    }

    /**
     * The cell of a stored number.
     *
     * @param stored its text in the file
     * @param format number format, "" if none
     */
    RawCell cell(String stored, int formatIndex, String format) {
        if (formatIndex != 0) {
            return read(stored, formatIndex, format);
        }
        RawCell known = often.get(stored);
        if (known == null) {
            known = read(stored, formatIndex, format);
            if (often.size() < REMEMBERED) {
                often.put(stored, known);
            }
        }
        return known;
    }

    private RawCell read(String stored, int formatIndex, String format) {
        String raw = stored.strip();
        double value;
        try {
            value = Double.parseDouble(raw);
        } catch (NumberFormatException notOne) {
            return RawCell.text(raw);
        }
        if (!Double.isFinite(value)) {
            return RawCell.of(RawCell.Form.ERROR, raw);
        }
        if (DateUtil.isADateFormat(formatIndex, format)) {
            Optional<String> date = date(value);
            if (date.isPresent()) {
                return RawCell.of(RawCell.Form.DATE, date.get());
            }
        }
        return RawCell.of(RawCell.Form.NUMBER, shown(raw, value, format));
    }

    /** A number worked out just now. */
    RawCell workedOut(double value, int formatIndex, String format) {
        RawCell cell = cell(Double.toString(value), formatIndex, format);
        return cell.form() == RawCell.Form.NUMBER ? RawCell.of(RawCell.Form.WORKED_OUT, cell.text()) : cell;
    }

    private static String shown(String raw, double value, String format) {
        if (PLAIN.matcher(raw).matches() && !format.contains("%")) {
            boolean padded = PADDED.matcher(format).matches() && raw.length() < format.length();
            return padded ? "0".repeat(format.length() - raw.length()) + raw : withUnit(raw, format);
        }
        BigDecimal kept = new BigDecimal(value).round(KEPT);
        if (format.contains("%") && QUOTED.matcher(format).replaceAll("").contains("%")) {
            return plain(kept.movePointRight(2)) + " %";
        }
        String digits = plain(kept);
        boolean whole = digits.length() < format.length()
                && PADDED.matcher(format).matches()
                && PLAIN.matcher(digits).matches();
        if (whole) {
            return "0".repeat(format.length() - digits.length()) + digits;
        }
        return withUnit(digits, format);
    }

    private static String withUnit(String digits, String format) {
        if (format.indexOf('"') < 0) {
            return digits;
        }
        Matcher m = UNIT.matcher(format);
        return m.matches() && ListUnit.of(Spelling.strip(m.group(1))).isPresent()
                ? digits + " " + Spelling.strip(m.group(1))
                : digits;
    }

    private static String plain(BigDecimal value) {
        if (value.signum() == 0) {
            return "0";
        }
        BigDecimal stripped = value.stripTrailingZeros();
        return Math.abs(stripped.precision() - stripped.scale()) > 40 ? stripped.toString() : stripped.toPlainString();
    }

    private Optional<String> date(double value) {
        try {
            LocalDateTime at = DateUtil.getLocalDateTime(value, base == Base.B1904);
            if (at == null) {
                return Optional.empty();
            }
            boolean day = at.toLocalTime().equals(LocalTime.MIDNIGHT);
            String text = at.withNano(0).toString().replace('T', ' ');
            return Optional.of(day ? at.toLocalDate().toString() : text);
        } catch (DateTimeException | IllegalArgumentException notOne) {
            return Optional.empty();
        }
    }
}
