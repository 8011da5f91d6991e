package farwatt.window.list;

import farwatt.intake.Outcome;
import farwatt.intake.ReportLine;
import farwatt.intake.RowState;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.cell.TextFieldTableCell;
import javafx.scene.text.Text;

/** The rows of a list as they stood there, what became of each, held ones first; their cells can be mended. */
final class RowsTable extends TableView<ReportLine> {
    private static final PseudoClass HELD = PseudoClass.getPseudoClass("held");
    private static final PseudoClass OUT = PseudoClass.getPseudoClass("out");
    private static final double STATE = 80;
    private static final double SAID = 260;
    private static final double INSETS = 12;
    private static final int LEAST = 4;
    private static final int MOST = 20;
    private static final double SIGN = 7.5;
    private static final double EDGES = 32;
    /** So many rows tell how wide a column needs to be. */
    private static final int LOOKED_AT = 200;

    /** Told of a cell that a person put right. */
    @FunctionalInterface
    interface Mended {
        void mend(String place, String heading, String text);
    }

    private final Mended mended;
    private List<String> shown = List.of();

    RowsTable(Mended mended) {
        this.mended = mended;
        setEditable(true);
        getSelectionModel().setCellSelectionEnabled(true);
        setAccessibleText("Rows of the list and what became of each");
        setPlaceholder(new Label("No list was read yet."));
    }

    void show(Outcome outcome) {
        Set<String> headings = new LinkedHashSet<>();
        outcome.report().forEach(line -> headings.addAll(line.original().keySet()));
        List<String> wanted = List.copyOf(headings);
        if (!wanted.equals(shown) || getColumns().isEmpty()) {
            shown = wanted;
            getColumns().setAll(columns(outcome.report(), wanted));
        }
        getItems()
                .setAll(outcome.report().stream()
                        .sorted((a, b) ->
                                Boolean.compare(b.state() == RowState.HELD_BACK, a.state() == RowState.HELD_BACK))
                        .toList());
    }

    private List<TableColumn<ReportLine, String>> columns(List<ReportLine> lines, List<String> headings) {
        List<TableColumn<ReportLine, String>> columns = new ArrayList<>();
        columns.add(column("place", width(lines, "place", ReportLine::place), ReportLine::place));
        TableColumn<ReportLine, String> state =
                column("state", STATE, line -> line.state().word());
        state.setCellFactory(c -> new StateCell());
        columns.add(state);
        TableColumn<ReportLine, String> said = column("what was done and why", SAID, ReportLine::said);
        said.setCellFactory(c -> new Wrapped<>());
        columns.add(said);
        for (String heading : headings) {
            Function<ReportLine, String> text = line -> line.original().getOrDefault(heading, "");
            TableColumn<ReportLine, String> column = column(heading, width(lines, heading, text), text);
            column.setCellFactory(TextFieldTableCell.forTableColumn());
            column.setEditable(true);
            column.setOnEditCommit(e -> mended.mend(e.getRowValue().place(), heading, e.getNewValue()));
            columns.add(column);
        }
        return columns;
    }

    /** Wide enough for what most cells hold, within reason; titles above the heading do not count. */
    private static double width(List<ReportLine> lines, String heading, Function<ReportLine, String> text) {
        int longest = heading.length();
        for (ReportLine line : lines.subList(0, Math.min(LOOKED_AT, lines.size()))) {
            boolean counts = line.state() != RowState.LEFT_OUT;
            longest = counts ? Math.max(longest, text.apply(line).length()) : longest;
        }
        return EDGES + SIGN * Math.max(LEAST, Math.min(MOST, longest));
    }

    private static TableColumn<ReportLine, String> column(
            String heading, double width, Function<ReportLine, String> text) {
        TableColumn<ReportLine, String> column = new TableColumn<>(heading);
        column.setCellValueFactory(row -> new ReadOnlyStringWrapper(text.apply(row.getValue())));
        column.setPrefWidth(width);
        column.setEditable(false);
        column.setSortable(false);
        return column;
    }

    /** The word of a state; held back stands out by weight and colour. */
    private static final class StateCell extends TableCell<ReportLine, String> {
        StateCell() {
            getStyleClass().add("fw-state");
        }

        @Override
        protected void updateItem(String word, boolean empty) {
            super.updateItem(word, empty);
            setText(empty ? "" : word);
            pseudoClassStateChanged(HELD, !empty && RowState.HELD_BACK.word().equals(word));
            pseudoClassStateChanged(OUT, !empty && RowState.LEFT_OUT.word().equals(word));
        }
    }

    /** A sentence that is never cut: it takes as many lines as it needs. */
    static final class Wrapped<T> extends TableCell<T, String> {
        private final Text text = new Text();

        Wrapped() {
            text.getStyleClass().add("text");
            text.wrappingWidthProperty().bind(widthProperty().subtract(INSETS));
            setPrefHeight(USE_COMPUTED_SIZE);
        }

        @Override
        protected void updateItem(String said, boolean empty) {
            super.updateItem(said, empty);
            text.setText(empty ? "" : said);
            setGraphic(empty ? null : text);
        }
    }
}
