package farwatt.window.takeoff;

import farwatt.window.takeoff.TakeOffModel.Line;
import farwatt.window.takeoff.TakeOffModel.Order;
import java.util.List;
import javafx.print.PageLayout;
import javafx.print.PrinterJob;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import javafx.stage.Window;

/** Puts a take-off on paper, page by page. */
final class Printing {
    /** Lines of the take-off on a page, in points of height for each. */
    private static final double LINE = 26;

    private static final double HEAD = 90;
    private static final List<Double> SHARES = List.of(12.0, 26.0, 10.0, 10.0, 6.0, 16.0, 9.0, 11.0);

    private Printing() {}

    /** Asks for a printer and prints; false if there is none or nothing was printed. */
    static boolean print(Order order, Window owner) {
        PrinterJob job = PrinterJob.createPrinterJob();
        if (job == null || !job.showPrintDialog(owner)) {
            return false;
        }
        PageLayout page = job.getJobSettings().getPageLayout();
        int fitting = (int) Math.max(1, (page.getPrintableHeight() - HEAD) / LINE);
        boolean whole = true;
        for (int from = 0; from < order.lines().size(); from += fitting) {
            int to = Math.min(order.lines().size(), from + fitting);
            whole &= job.printPage(sheet(order, order.lines().subList(from, to), page.getPrintableWidth()));
        }
        return job.endJob() && whole;
    }

    static VBox sheet(Order order, List<Line> lines, double width) {
        Label title = label("Take-off: " + order.title() + (order.cost().isEmpty() ? "" : ", " + order.cost()), 13);
        GridPane grid = new GridPane();
        grid.setHgap(6);
        grid.setVgap(3);
        for (double share : SHARES) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(share);
            grid.getColumnConstraints().add(column);
        }
        row(grid, 0, TakeOffView.HEADINGS);
        for (int i = 0; i < lines.size(); i++) {
            row(grid, i + 1, lines.get(i).texts());
        }
        VBox sheet = new VBox(8, title, grid, label(order.caution(), 8));
        sheet.setPrefWidth(width);
        sheet.setMaxWidth(width);
        return sheet;
    }

    private static void row(GridPane grid, int at, List<String> texts) {
        for (int i = 0; i < texts.size(); i++) {
            grid.add(label(texts.get(i), 8), i, at);
        }
    }

    private static Label label(String text, int size) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setStyle("-fx-font-size: " + size + "px; -fx-text-fill: black;");
        return label;
    }
}
