package farwatt.command;

import farwatt.catalogue.Catalogue;
import farwatt.catalogue.Kind;
import farwatt.catalogue.Name;
import farwatt.plan.Table;
import farwatt.report.Messages;
import java.util.List;
import java.util.Map;

/** The reference page in Markdown: every name of the catalogue and every sentence the program may say. */
final class ReferencePage {
    private static final List<String> ROOMS = List.of(
            "catalogue",
            "language",
            "file",
            "document",
            "engine",
            "review",
            "intake",
            "study",
            "workbook",
            "script",
            "picture",
            "grid",
            "studies",
            "window",
            "command");
    private static final String HEAD = """
            # Names and sentences

            Made from the catalogue and the message catalogue by `java -jar target/farwatt.jar names --page`; a test
            keeps it fresh. Figures marked "check against your edition" were not compared with the standard's own text.

            """;

    private ReferencePage() {}

    static String text() {
        StringBuilder page = new StringBuilder(HEAD);
        for (Table table : Table.values()) {
            page.append("## ").append(table.key()).append("\n\n");
            page.append("| name | unit or kind | stage | default | what it is | formula | source |\n");
            page.append("|---|---|---|---|---|---|---|\n");
            for (Name name : Catalogue.of(table)) {
                row(page, name);
            }
            page.append('\n');
        }
        page.append("## What the program says\n\nPlaces in braces are filled in.\n\n");
        page.append("| code | sentence |\n|---|---|\n");
        for (String room : ROOMS) {
            for (Map.Entry<String, String> entry : Messages.all(room).entrySet()) {
                page.append("| ")
                        .append(entry.getKey())
                        .append(" | ")
                        .append(cell(entry.getValue()))
                        .append(" |\n");
            }
        }
        return page.toString();
    }

    private static void row(StringBuilder page, Name name) {
        for (String part : List.of(
                "`" + name.key() + "`",
                kind(name.kind()),
                name.stage().word(),
                name.fallback().text(),
                name.sentence(),
                name.formula(),
                name.source())) {
            page.append("| ").append(cell(part)).append(' ');
        }
        page.append("|\n");
    }

    private static String kind(Kind kind) {
        if (kind instanceof Kind.Quantity quantity) {
            String symbol = quantity.symbol().replace("¤", "money");
            return symbol.isEmpty() ? "number" : symbol;
        }
        if (kind instanceof Kind.Choice choice) {
            return String.join(", ", choice.words());
        }
        if (kind instanceof Kind.RowOf row) {
            return "row of "
                    + String.join(", ", row.tables().stream().map(Table::key).toList());
        }
        return kind instanceof Kind.Gauge ? "AWG" : kind instanceof Kind.YesNo ? "yes/no" : "text";
    }

    private static String cell(String text) {
        return text.replace("|", "\\|").replace("\n", " ");
    }
}
