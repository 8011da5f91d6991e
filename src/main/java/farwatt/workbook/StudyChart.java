package farwatt.workbook;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrossBetween;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFChartAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** The workbook's own chart beside a table: it refers to the cells, so it follows what is typed there. */
final class StudyChart {
    private static final int GAP = 2;
    private static final int COLUMNS = 8;
    private static final int COLUMN = 9;
    private static final int ROWS = 24;
    private static final int MOST_SERIES = 8;
    /** More points than that are a line without marks. */
    private static final int MOST_MARKS = 40;

    private static final int BAR_GAP = 15;
    private static final int[] INKS = {0x2A6C80, 0xA65A00, 0x4F7A28, 0x7A3E86, 0x9B2C1F, 0x44546A, 0x8A7A00, 0x00787A};

    private final Book book;
    private final Places.Place place;
    private final SXSSFSheet sheet;
    private final Schedule schedule;

    StudyChart(Book book, Places.Place place, SXSSFSheet sheet) {
        this.book = book;
        this.place = place;
        this.sheet = sheet;
        schedule = place.schedule();
    }

    /** Digits that the chart and the gap before it are wide. */
    static int digits() {
        return GAP + COLUMNS * COLUMN;
    }

    static int lastColumn(Places.Place place) {
        return place.schedule().columns().size() + COLUMNS;
    }

    static int lastRow(Places.Place place) {
        return place.first() + ROWS;
    }

    void draw(Schedule.Chart kind) {
        int first = schedule.columns().size();
        sheet.setColumnWidth(first, GAP * 256);
        for (int i = 1; i <= COLUMNS; i++) {
            sheet.setColumnWidth(first + i, COLUMN * 256);
        }
        XSSFSheet plain = book.poi().getXSSFWorkbook().getSheetAt(book.poi().getSheetIndex(sheet));
        XSSFChart chart = plain.createDrawingPatriarch()
                .createChart(new XSSFClientAnchor(
                        0, 0, 0, 0, first + 1, place.first() + 1, first + 1 + COLUMNS, place.first() + ROWS));
        chart.setTitleText(Book.legal(schedule.name()));
        chart.setTitleOverlay(false);
        int[] series = series();
        plot(chart, kind, series);
        if (series.length > 1) {
            chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
        }
        chart.getGraphicFrame()
                .getCTGraphicalObjectFrame()
                .getNvGraphicFramePr()
                .getCNvPr()
                .setDescr(Book.legal(alt(kind, series)));
    }

    /** Columns of numbers that one axis can carry: those in the first one's unit. */
    private int[] series() {
        List<Column> columns = schedule.columns();
        int[] numbers = IntStream.range(1, columns.size())
                .filter(i -> columns.get(i).form().isNumber())
                .toArray();
        return IntStream.of(numbers)
                .filter(i -> isAlike(columns.get(i), columns.get(numbers[0])))
                .limit(MOST_SERIES)
                .toArray();
    }

    private static boolean isAlike(Column one, Column other) {
        boolean share = one.form() == Form.SHARE;
        return one.unit().equals(other.unit()) && share == (other.form() == Form.SHARE);
    }

    private String alt(Schedule.Chart kind, int[] series) {
        List<String> names = IntStream.of(series)
                .mapToObj(i -> schedule.columns().get(i).title())
                .toList();
        String what = kind == Schedule.Chart.LINE ? "Lines: " : "Bars: ";
        return what + String.join("; ", names) + " over "
                + schedule.columns().get(0).title() + ", " + schedule.lines().size()
                + " points from the table beside it";
    }

    private void plot(XSSFChart chart, Schedule.Chart kind, int[] series) {
        boolean line = kind == Schedule.Chart.LINE;
        XDDFChartAxis along =
                line ? chart.createValueAxis(AxisPosition.BOTTOM) : chart.createCategoryAxis(AxisPosition.BOTTOM);
        along.setTitle(Book.legal(schedule.columns().get(0).title()));
        along.setTickLabelPosition(AxisTickLabelPosition.LOW);
        XDDFValueAxis up = chart.createValueAxis(AxisPosition.LEFT);
        up.setCrossBetween(line ? AxisCrossBetween.MIDPOINT_CATEGORY : AxisCrossBetween.BETWEEN);
        if (series.length == 1) {
            up.setTitle(Book.legal(schedule.columns().get(series[0]).title()));
        }
        XDDFChartData data = chart.createData(line ? ChartTypes.SCATTER : ChartTypes.BAR, along, up);
        data.setVaryColors(false);
        if (data instanceof XDDFScatterChartData scatter) {
            scatter.setStyle(ScatterStyle.LINE_MARKER);
        } else if (data instanceof XDDFBarChartData bars) {
            bars.setBarDirection(BarDirection.COL);
            bars.setGapWidth(kind == Schedule.Chart.STEPS ? 0 : BAR_GAP);
        }
        for (int i = 0; i < series.length; i++) {
            XDDFChartData.Series one = data.addSeries(line ? numbers(0) : names(), numbers(series[i]));
            one.setTitle(
                    Book.legal(schedule.columns().get(series[i]).title()),
                    new CellReference(place.sheet(), place.headings(), series[i], true, true));
            look(one, INKS[i]);
        }
        chart.plot(data);
    }

    private void look(XDDFChartData.Series series, int ink) {
        byte[] parts = {(byte) (ink >> 16), (byte) (ink >> 8), (byte) ink};
        XDDFSolidFillProperties fill = new XDDFSolidFillProperties(XDDFColor.from(parts));
        if (series instanceof XDDFScatterChartData.Series line) {
            line.setSmooth(false);
            line.setMarkerStyle(schedule.lines().size() > MOST_MARKS ? MarkerStyle.NONE : MarkerStyle.CIRCLE);
            line.setLineProperties(new XDDFLineProperties(fill));
        } else {
            series.setFillProperties(fill);
        }
    }

    private String range(int column) {
        String letters = Places.letters(column);
        return "'" + place.sheet().replace("'", "''") + "'!$" + letters + "$" + (place.first() + 1) + ":$" + letters
                + "$" + place.end();
    }

    private XDDFNumericalDataSource<Double> numbers(int column) {
        Double[] values = new Double[schedule.lines().size()];
        for (int i = 0; i < values.length; i++) {
            if (schedule.lines().at(i).get(column).shown() instanceof Entry.Amount amount) {
                values[i] = amount.value();
            }
        }
        XDDFNumericalDataSource<Double> numbers = XDDFDataSourcesFactory.fromArray(values, range(column), column);
        // an axis chooses its decimals itself
        Form form = schedule.columns().get(column).form();
        numbers.setFormatCode((form == Form.SHARE ? Form.SHARE : Form.FREE).code());
        return numbers;
    }

    private XDDFDataSource<?> names() {
        if (schedule.columns().get(0).form().isNumber()) {
            return numbers(0);
        }
        String[] names = new String[schedule.lines().size()];
        for (int i = 0; i < names.length; i++) {
            Entry.Content shown = schedule.lines().at(i).get(0).shown();
            names[i] = shown instanceof Entry.Words words ? Book.legal(words.text()) : "–";
        }
        return XDDFDataSourcesFactory.fromArray(names, range(0), 0);
    }
}
