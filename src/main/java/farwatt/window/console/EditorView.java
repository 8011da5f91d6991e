package farwatt.window.console;

import java.util.List;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.TextArea;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.SVGPath;
import javafx.scene.text.Text;

/**
 * A place to write a script: the toolkit's own text area takes keys and mouse, its letters are painted over it in
 * colours, so far as they are in view. For the window's thread.
 */
final class EditorView extends Region {
    private static final int TAB = 8;
    private static final double CARET = 2;

    private final TextArea area = new TextArea();
    private final Pane letters = new Pane();
    private final Rectangle caret = new Rectangle();
    private final Rectangle clip = new Rectangle();
    private final Text probe = new Text("m");
    private int wrongLine = -1;

    EditorView() {
        area.getStyleClass().addAll("fw-console", "fw-editor");
        letters.setMouseTransparent(true);
        letters.setManaged(false);
        letters.setClip(clip);
        caret.getStyleClass().add("fw-caret");
        getChildren().addAll(area, letters);
        area.textProperty().addListener(o -> changed());
        area.caretPositionProperty().addListener(o -> requestLayout());
        area.scrollTopProperty().addListener(o -> requestLayout());
        area.scrollLeftProperty().addListener(o -> requestLayout());
        area.fontProperty().addListener(o -> requestLayout());
        area.focusedProperty().addListener(o -> requestLayout());
    }

    TextArea area() {
        return area;
    }

    private void changed() {
        wrongLine = -1;
        requestLayout();
    }

    /** Puts a text in the place of all. */
    void put(Typing.Put put) {
        area.setText(put.text());
        area.positionCaret(put.caret());
    }

    /** Replaces what differs, so that undo goes back over it. */
    void edit(Typing.Put put) {
        String now = area.getText();
        int from = 0;
        int most = Math.min(now.length(), put.text().length());
        while (from < most && now.charAt(from) == put.text().charAt(from)) {
            from++;
        }
        int same = 0;
        while (same < most - from
                && now.charAt(now.length() - 1 - same)
                        == put.text().charAt(put.text().length() - 1 - same)) {
            same++;
        }
        area.replaceText(
                from, now.length() - same, put.text().substring(from, put.text().length() - same));
        area.positionCaret(put.caret());
    }

    /** Marks a line, counted from 1, and takes the caret there. */
    void markLine(int line) {
        wrongLine = line - 1;
        int at = 0;
        for (int i = 1; i < line; i++) {
            at = area.getText().indexOf('\n', at) + 1;
        }
        area.positionCaret(Math.min(at, area.getLength()));
        requestLayout();
    }

    /** Which line is marked, counted from 1; 0 for none. */
    int markedLine() {
        return wrongLine + 1;
    }

    @Override
    protected double computePrefWidth(double height) {
        return area.prefWidth(height);
    }

    @Override
    protected double computePrefHeight(double width) {
        return area.prefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        area.resizeRelocate(0, 0, getWidth(), getHeight());
        area.layout();
        letters.resizeRelocate(0, 0, getWidth(), getHeight());
        paint();
    }

    /** Where the caret stands: left, top and bottom of its line. */
    Rectangle caret() {
        return caret;
    }

    private void paint() {
        letters.getChildren().clear();
        if (!(area.lookup(".content") instanceof Region content)) {
            return;
        }
        Point2D start = letters.sceneToLocal(content.localToScene(
                content.getPadding().getLeft(), content.getPadding().getTop()));
        clip();
        probe.setFont(area.getFont());
        double high = probe.getLayoutBounds().getHeight();
        String text = area.getText();
        int line = 0;
        int from = 0;
        Lines lines = new Lines(text);
        while (from <= text.length()) {
            int end = text.indexOf('\n', from);
            int to = end < 0 ? text.length() : end;
            double y = start.getY() + line * high;
            if (y + high > 0 && y < getHeight()) {
                if (line == wrongLine) {
                    wrong(y, high, start.getX());
                }
                lines.paint(from, to, start.getX(), y);
            }
            if (area.getCaretPosition() >= from && area.getCaretPosition() <= to) {
                caretAt(start.getX() + width(text.substring(from, area.getCaretPosition())), y, high);
            }
            line++;
            from = to + 1;
        }
    }

    /** Nothing is painted over the bars at the edges. */
    private void clip() {
        Node seen = area.lookup(".viewport");
        Node view = seen == null ? area : seen;
        Bounds all = letters.sceneToLocal(view.localToScene(view.getLayoutBounds()));
        clip.setX(all.getMinX());
        clip.setY(all.getMinY());
        clip.setWidth(all.getWidth());
        clip.setHeight(all.getHeight());
    }

    private void wrong(double y, double high, double x) {
        Rectangle band = new Rectangle(0, y, getWidth(), high);
        band.getStyleClass().add("fw-wrong-line");
        SVGPath mark = new SVGPath();
        mark.setContent("M0 0 L8 5 L0 10 Z");
        mark.getStyleClass().add("fw-wrong-mark");
        mark.relocate(Math.max(2, x - 14), y + (high - 10) / 2);
        letters.getChildren().addAll(band, mark);
    }

    private void caretAt(double x, double y, double high) {
        caret.setX(x);
        caret.setY(y);
        caret.setWidth(CARET);
        caret.setHeight(high);
        if (area.isFocused()) {
            letters.getChildren().add(caret);
        }
    }

    private double width(String text) {
        probe.setText(spaced(text));
        double width = text.isEmpty() ? 0 : probe.getLayoutBounds().getWidth();
        probe.setText("m");
        return width;
    }

    /** Tabs as the spaces they take. */
    private static String spaced(String line) {
        if (line.indexOf('\t') < 0) {
            return line;
        }
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < line.length(); i++) {
            if (line.charAt(i) == '\t') {
                out.append(" ".repeat(TAB - out.length() % TAB));
            } else {
                out.append(line.charAt(i));
            }
        }
        return out.toString();
    }

    /** Paints lines from the top down. */
    private final class Lines {
        private final String text;
        private final List<Tint.Stretch> stretches;
        private int at;

        Lines(String text) {
            this.text = text;
            stretches = Tint.of(text);
        }

        void paint(int from, int to, double x, double y) {
            while (at > 0 && stretches.get(at - 1).to() > from) {
                at--;
            }
            while (at < stretches.size() && stretches.get(at).to() <= from) {
                at++;
            }
            double before = width(text.substring(from, from));
            for (int i = at; i < stretches.size() && stretches.get(i).from() < to; i++) {
                Tint.Stretch stretch = stretches.get(i);
                int begin = Math.max(from, stretch.from());
                int end = Math.min(to, stretch.to());
                double after = width(text.substring(from, end));
                String all = spaced(text.substring(from, end));
                String shown = all.substring(spaced(text.substring(from, begin)).length());
                if (!shown.isBlank()) {
                    letters.getChildren().add(letter(shown, stretch.tint(), x + before, y));
                }
                before = after;
            }
        }

        private Text letter(String shown, Tint tint, double x, double y) {
            Text node = new Text(shown);
            node.setFont(area.getFont());
            node.setTextOrigin(VPos.TOP);
            node.setX(x);
            node.setY(y);
            node.getStyleClass().addAll("fw-letters", tint.style);
            return node;
        }
    }
}
