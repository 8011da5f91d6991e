package farwatt.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Row;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Lists as text: marks, blanks, delimiters, decimal commas, remarks in cells, identifiers, quantities. */
class TextListsTest {
    @Test
    void marksAndUnseenBlanksDoNotCount() throws Exception {
        Outcome outcome = Lists.read("unseen-blanks/devices.csv");
        assertEquals(
                List.of("Device name", "Qty", "Max Power (W)", "Location"),
                outcome.columns().stream().map(ColumnMeaning::heading).toList());
        assertEquals(List.of("Gate reader 1", "Gate reader 2", "Hall AP"), Lists.ids(outcome.devices()));
        assertEquals(List.of("Pier 1"), Lists.ids(outcome.zones()));
        assertEquals(List.of("Pier 1", "Pier 1", "Pier 1"), Lists.cells(outcome.devices(), "zone"));
        assertEquals(List.of("6.5 W", "6.5 W", "12.95 W"), Lists.cells(outcome.devices(), "draw"));
        assertEquals(2, outcome.count(RowState.TAKEN) + outcome.count(RowState.CHANGED));
    }

    @Test
    void semicolonsWithDecimalCommas() throws Exception {
        Outcome outcome = Lists.read("decimal-commas/devices.csv");
        assertEquals(5, outcome.columns().size());
        assertEquals(57.9, Lists.watts(outcome.devices()), 1e-9);
        assertEquals(List.of("62.5 m", "62.5 m", "18 m", "90 m"), Lists.cells(outcome.runs(), "length"));
        assertEquals(
                List.of("run Torkamera 1", "run Torkamera 2", "run Zapfsäule", "run Funk"), Lists.ids(outcome.runs()));
        assertEquals(List.of("Torkamera 1", "Torkamera 2", "Zapfsäule", "Funk"), Lists.cells(outcome.runs(), "to"));
        assertTrue(outcome.report().stream().noneMatch(line -> line.codes().contains("intake.odd_volts")));
    }

    @Test
    void unitsAndRemarksInsideCells() throws Exception {
        Outcome outcome = Lists.read("units-in-cells/devices.csv");
        assertEquals(17, outcome.rows());
        assertEquals(List.of("A", "C", "D", "E", "F", "G", "H", "I", "M", "N", "P"), Lists.ids(outcome.devices()));
        assertEquals(
                List.of("12.95 W", "15 W", "13 W", "", "8 W", "11.5 W", "4.9 W", "12 W", "12 W", "12.95 W", ""),
                Lists.cells(outcome.devices(), "draw"));
        assertEquals("7 W", outcome.devices().get(5).text("draw_typical"));
        assertEquals("4", outcome.devices().get(3).text("class"));
        assertEquals("1", outcome.devices().get(10).text("class"));
        understood(outcome, "A", "12.95 W", Source.TYPED, "12.95W");
        understood(outcome, "C", "15 W", Source.BOUND, "15 W max");
        understood(outcome, "D", "13 W", Source.BOUND, "<13");
        understood(outcome, "E", "25.5 W", Source.CLASS, "N/A");
        understood(outcome, "F", "8 W", Source.RANGE, "6-8 W");
        understood(outcome, "G", "11.5 W", Source.MODES, "7.0 / 11.5 (IR)");
        understood(outcome, "H", "4.9 W", Source.TYPED, "4900mW");
        understood(outcome, "I", "12 W", Source.COMPUTED, "48V/0.25A");
        understood(outcome, "J", "10.5 W", Source.COMPUTED, "5V 2.1A adaptor");
        understood(outcome, "M", "12 W", Source.APPROXIMATE, "~12");
        understood(outcome, "P", "3.84 W", Source.CLASS, "");
        understood(outcome, "N", "12.95 W", Source.TYPED, "12.95");
        assertEquals(List.of(), row(outcome, "N").codes(), "12.95 W at 0.27 A are 48 V");
        assertTrue(row(outcome, "D").codes().contains("intake.above_right"));
        assertTrue(row(outcome, "C").said().contains("15 W"), row(outcome, "C").said());
        held(outcome, "B", "intake.needs_volts");
        held(outcome, "J", "intake.fed_otherwise");
        held(outcome, "K", "intake.not_read");
        held(outcome, "L", "intake.not_read");
        held(outcome, "O", "intake.negative");
        assertEquals(11, outcome.count(RowState.TAKEN) + outcome.count(RowState.CHANGED));
        assertEquals(List.of("B", "J", "K", "L", "O"), Lists.ids(outcome.held()));
    }

    private static ReportLine row(Outcome outcome, String name) {
        return outcome.report().stream()
                .filter(line -> name.equals(line.original().get("Name")))
                .findFirst()
                .orElseThrow();
    }

    private static void understood(Outcome outcome, String name, String text, Source source, String original) {
        assertEquals(
                List.of(new Understood("draw", text, source, original)),
                row(outcome, name).understood());
    }

    private static void held(Outcome outcome, String name, String code) {
        assertEquals(RowState.HELD_BACK, row(outcome, name).state());
        assertTrue(row(outcome, name).codes().contains(code), row(outcome, name).said());
    }

    @Test
    void identifiersStayTextByteForByte() throws Exception {
        Outcome outcome = Lists.read("identifiers/devices.csv");
        List<Row> devices = outcome.devices();
        assertEquals(List.of("Pump 1", "Pump 2", "Pump 3"), Lists.ids(devices));
        assertEquals(List.of("8939010102358478435", "8.93901E+18", "219E01"), Lists.cells(devices, "serial"));
        assertEquals(List.of("0012FB3E5678", "12E456000000", "00:12:FB:3E:56:78"), Lists.cells(devices, "mac"));
        assertEquals(List.of("000451", "451", "000452"), Lists.cells(devices, "asset"));
        assertEquals(List.of("0001E0", "0001EA", "100E10"), Lists.cells(devices, "hex_tag"));
        assertEquals(List.of("serial", "mac", "asset", "hex_tag"), Lists.ids(outcome.ownColumns()));
        assertEquals(List.of("text", "text", "text", "text"), Lists.cells(outcome.ownColumns(), "kind"));
        assertEquals(List.of("intake.rounded"), Lists.line(outcome, "line 3").codes());
        assertEquals(
                List.of("intake.same_identifier"), Lists.line(outcome, "line 2").codes());
        assertEquals(
                List.of("intake.same_identifier"), Lists.line(outcome, "line 4").codes());
    }

    @Test
    void textThatASheetProgramWouldRunIsKeptExactly() throws Exception {
        Outcome outcome = Lists.read("text-that-runs/devices.csv");
        assertEquals(
                List.of("=cmd|'/C calc'!A0", "+49 gate", "@kiosk", "-Pier end-", "\t=1+1", "=HYPERLINK(\"x\")"),
                Lists.ids(outcome.devices()));
        assertEquals(18.0, Lists.watts(outcome.devices()), 1e-9);
        assertEquals(
                List.of("-20 degC", "-5.5 degC", "0 degC", "25 degC", "5 degC", "5 degC"),
                Lists.cells(outcome.devices(), "temp"));
        assertEquals("quantity", outcome.ownColumns().get(0).text("kind"));
        assertEquals("degC", outcome.ownColumns().get(0).text("unit"));
    }

    @Test
    void theMarkThatKeepsTextFromRunningIsUndone() throws Exception {
        Outcome outcome = Lists.paste(
                "Name,Power (W),Temp (°C)\n'=1+1,3,-20\n'@kiosk,3,5\n\"'\t=x\",3,0\n''-end,3,1\n'tis lamp,3,2\n");
        assertEquals(List.of("=1+1", "@kiosk", "\t=x", "'-end", "'tis lamp"), Lists.ids(outcome.devices()));
        assertEquals("-20 degC", outcome.devices().get(0).text("temp"));
    }

    @Test
    void calendarDatesOfTextListsStayAsTheyAre() throws Exception {
        Outcome outcome = Lists.paste("Name,Power (W),Installed\ncam,6,2018-01-02\nhorn,3,2018-01-02 18:00\n");
        assertEquals(List.of("2018-01-02", "2018-01-02 18:00"), Lists.cells(outcome.devices(), "installed"));
    }

    @Test
    void quantitiesBecomeNumberedDevices() throws Exception {
        Outcome outcome = Lists.read("quantities/devices.csv");
        assertEquals(
                List.of("Cam 1", "Cam 2", "Cam 3", "Cam", "Lamp", "Speaker 1", "Speaker 2", "Cam 4"),
                Lists.ids(outcome.devices()));
        assertEquals(
                List.of("Pier", "Pier", "Pier", "Hall", "Pier", "Pier", "Pier", "Pier"),
                Lists.cells(outcome.devices(), "zone"));
        assertEquals(56.95, Lists.watts(outcome.devices()), 1e-9);
        assertEquals(RowState.LEFT_OUT, Lists.line(outcome, "line 4").state());
        assertEquals(
                List.of("intake.quantity_zero"), Lists.line(outcome, "line 4").codes());
        assertEquals(RowState.HELD_BACK, Lists.line(outcome, "line 5").state());
        assertEquals(List.of("intake.not_whole"), Lists.line(outcome, "line 5").codes());
        assertEquals(
                List.of("intake.no_quantity"), Lists.line(outcome, "line 6").codes());
        assertEquals(
                List.of("Speaker 1", "Speaker 2"), Lists.line(outcome, "line 7").made());
        assertEquals(List.of("intake.name_again"), Lists.line(outcome, "line 8").codes());
        assertEquals(
                Map.of("Site", "Pier", "Name", "Horn", "Qty", "2.5", "Power W", "3.0"),
                Lists.line(outcome, "line 5").original());
    }
}
