package farwatt.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.report.Cancel;
import farwatt.report.Refusal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lists as workbooks: headings of two rows, merged areas, totals, what is hidden, formulas, dates, wrong containers. */
class WorkbookListsTest {
    @TempDir
    Path folder;

    @Test
    void titleRowsTwoLineHeadingMergedAreasAndTotals() throws Exception {
        Outcome outcome = Lists.read("merged-headings/schedule.xlsx");
        assertEquals(
                List.of(
                        "Area",
                        "Device",
                        "Qty",
                        "Power / Day W",
                        "Power / Night W",
                        "Cable / Length m",
                        "Cable / Type"),
                outcome.columns().stream().map(ColumnMeaning::heading).toList());
        assertEquals(
                List.of(
                        "Gate camera 1",
                        "Gate camera 2",
                        "Yard radio",
                        "Intercom",
                        "Till 1",
                        "Till 2",
                        "Till 3",
                        "Info screen"),
                Lists.ids(outcome.devices()));
        assertEquals(
                List.of("Yard", "Yard", "Yard", "Yard", "Shop", "Shop", "Shop", "Shop"),
                Lists.cells(outcome.devices(), "zone"));
        assertEquals(88.9, Lists.watts(outcome.devices()), 1e-9);
        assertEquals("6.2 W", outcome.devices().get(0).text("draw_typical"));
        assertEquals(
                List.of("70 m", "70 m", "45 m", "30 m", "18 m", "18 m", "18 m", "25 m"),
                Lists.cells(outcome.runs(), "length"));
        assertEquals("outdoor", outcome.runs().get(0).text("sheath"));
        assertEquals(5, outcome.count(RowState.TAKEN) + outcome.count(RowState.CHANGED));
        assertEquals(6, outcome.count(RowState.LEFT_OUT));
        assertEquals(
                List.of("intake.out_total"), Lists.line(outcome, "Liste!A11").codes());
        assertEquals(
                List.of("intake.out_note"), Lists.line(outcome, "Liste!A13").codes());
        Map<String, String> stated =
                Map.of("Qty", "8", "Power / Day W", "79.7", "Power / Night W", "88.9", "Cable / Length m", "188");
        assertEquals(4, outcome.totals().size());
        for (TotalsCheck check : outcome.totals()) {
            assertEquals(stated.get(check.heading()), check.stated());
            assertTrue(check.agrees(), check.said());
        }
    }

    @Test
    void whatIsHiddenIsLeftOutAndSaid() throws Exception {
        Outcome outcome = Lists.read("hidden/hidden.xlsx");
        assertEquals(List.of("Pier cam 1", "Pier cam 2", "Hall AP", "Horn"), Lists.ids(outcome.devices()));
        assertEquals(28.95, Lists.watts(outcome.devices()), 1e-9);
        assertTrue(outcome.notices().stream()
                .anyMatch(n -> n.text().contains("2 hidden rows, 1 hidden column, 2 hidden sheets")));
        assertEquals(
                List.of("hidden_rows", "hidden_columns", "hidden_sheets"),
                outcome.questions().stream().map(Question::key).toList());
        assertTrue(outcome.questions().stream().allMatch(q -> q.used().equals("leave out")));
        assertFalse(Lists.ids(outcome.ownColumns()).contains("internal_cost"));
        Mapping rows = Mapping.NONE.withAnswer("hidden_rows", "take");
        Outcome all = Lists.read("hidden/hidden.xlsx", Wishes.NONE.with(rows));
        assertEquals(103.8, Lists.watts(all.devices()), 1e-9);
        Mapping sheets = rows.withAnswer("hidden_sheets", "take");
        Outcome everything = Lists.read("hidden/hidden.xlsx", Wishes.NONE.with(sheets));
        assertEquals(103.8 + 89.1, Lists.watts(everything.devices()), 1e-9);
    }

    @Test
    void formulasWithoutStoredResultsAreWorkedOutOrHeldBack() throws Exception {
        Outcome outcome = Lists.read("no-stored-results/uncached.xlsx");
        assertEquals(List.of("16.5 W", "12.95 W", "11 W"), Lists.cells(outcome.devices(), "draw"));
        assertEquals(40.45, Lists.watts(outcome.devices()), 1e-9);
        assertEquals(
                List.of("intake.worked_out"), Lists.line(outcome, "Devices!A2").codes());
        ReportLine mast = Lists.line(outcome, "Devices!A4");
        assertEquals(RowState.HELD_BACK, mast.state());
        assertTrue(mast.said().contains("#N/A"), mast.said());
        assertEquals(RowState.TAKEN, Lists.line(outcome, "Devices!A5").state());
        assertEquals(List.of("9 W", "0 W", "0 W"), Lists.cells(outcome.devices(), "heater"));
    }

    @Test
    void highCompressionOpensAndTheBombIsRefused() throws Exception {
        Outcome outcome = Lists.read("packed/legit_repetitive_styles.xlsx");
        assertEquals(List.of("Bus bay cam", "Yard PTZ"), Lists.ids(outcome.devices()));
        refused("packed/inflates_to_120MB.xlsx", "intake.swells");
    }

    @Test
    void theContainerIsDecidedByContent() throws Exception {
        assertEquals(
                List.of("Barn camera"),
                Lists.ids(Lists.read("containers/old_binary_renamed.xlsx").devices()));
        Outcome csv = Lists.read("containers/really_csv.xlsx");
        assertEquals("6.5 W", csv.devices().get(0).text("draw"));
        refused("containers/locked_password_orchard.xlsx", "intake.locked");
        refused("containers/html_table.xls", "intake.is_html");
        refused("containers/strict_variant.xlsx", "intake.is_strict");
        refused("containers/binary_type_marker.xlsb", "intake.is_xlsb");
        refused("containers/list.ods", "intake.is_open_document");
        refused("containers/cut_off.xlsx", "intake.damaged");
        refused("containers/empty.xlsx", "intake.empty");
    }

    @Test
    void aLockedWorkbookOpensWithItsPasswordOnly() throws Exception {
        Outcome outcome = Lists.read("containers/locked_password_orchard.xlsx", Wishes.NONE.withPassword("orchard"));
        assertEquals(2, outcome.count(RowState.TAKEN) + outcome.count(RowState.CHANGED));
        Refusal wrong = assertThrows(
                Refusal.class,
                () -> Lists.read("containers/locked_password_orchard.xlsx", Wishes.NONE.withPassword("harbour")));
        assertEquals("intake.wrong_password", wrong.notice().code());
    }

    private void refused(String name, String code) throws Exception {
        Path copy = folder.resolve(Path.of(name).getFileName());
        Files.copy(Lists.file(name), copy);
        Refusal refusal = assertThrows(Refusal.class, () -> Intake.read(copy, Wishes.NONE, new Cancel()));
        assertEquals(code, refusal.notice().code());
        assertFalse(
                refusal.notice().text().contains("Exception"), refusal.notice().text());
        Files.delete(copy);
    }

    @Test
    void aFarEmptyCellCostsNothing() throws Exception {
        Outcome outcome = Lists.read("far-cell/ghost_last_cell.xlsx");
        assertEquals(4, outcome.rows());
        assertEquals(2, outcome.columns().size());
        assertEquals(22.45, Lists.watts(outcome.devices()), 1e-9);
    }

    @Test
    void datesFollowTheWorkbooksOwnDayZero() throws Exception {
        Outcome outcome = Lists.read("day-zero/base1904.xlsx");
        assertEquals(
                List.of("2018-01-02", "1904-01-01", "2018-01-02 18:00"), Lists.cells(outcome.devices(), "installed"));
        assertEquals(
                List.of("intake.date_base"), Lists.line(outcome, "Devices!A3").codes());
        assertEquals(List.of(), Lists.line(outcome, "Devices!A2").codes());
    }

    @Test
    void aPoweredPortIsNoSource() throws Exception {
        Outcome outcome = Lists.read("ports/ports.csv");
        assertEquals(List.of(), outcome.devices());
        assertEquals(List.of("EDGE-1"), Lists.ids(outcome.switches()));
        assertEquals("4", outcome.switches().get(0).text("ports"));
        assertEquals("2", outcome.switches().get(0).text("type"));
        assertEquals("6", outcome.switches().get(0).text("uplink_class"));
        assertEquals(List.of("intake.port_in"), Lists.line(outcome, "line 2").codes());
        assertEquals(List.of("intake.port_out"), Lists.line(outcome, "line 3").codes());
        assertEquals(5, outcome.count(RowState.CHANGED));
    }

    @Test
    void portsKnownByTheirLabelsAloneAreConfirmedFirst() throws Exception {
        Outcome outcome = Lists.read("ports/ports_text.csv");
        assertEquals(List.of(), outcome.switches());
        assertEquals(5, outcome.count(RowState.HELD_BACK));
        Question question = outcome.questions().get(0);
        assertEquals("ports:EDGE-1", question.key());
        Mapping yes = Mapping.NONE.withAnswer("ports:EDGE-1", "take");
        Outcome confirmed = Lists.read("ports/ports_text.csv", Wishes.NONE.with(yes));
        assertEquals("4", confirmed.switches().get(0).text("ports"));
        assertEquals("6", confirmed.switches().get(0).text("uplink_class"));
        assertEquals(5, confirmed.count(RowState.CHANGED));
    }
}
