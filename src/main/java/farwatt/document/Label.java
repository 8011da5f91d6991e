package farwatt.document;

import farwatt.plan.Change;
import farwatt.plan.Table;
import farwatt.report.Messages;

/** What a person calls a change. */
final class Label {
    private Label() {}

    static String of(Change change) {
        if (change instanceof Change.Batch batch) {
            return batch.label();
        }
        if (change instanceof Change.SetCell set) {
            return set.table() == Table.PLAN
                    ? Messages.text(DocumentCode.SET_SETTING, set.name())
                    : Messages.text(DocumentCode.SET_CELL, set.name(), set.id());
        }
        if (change instanceof Change.AddRow add) {
            return Messages.text(DocumentCode.ADD_ROW, add.row().id());
        }
        if (change instanceof Change.DropRow drop) {
            return Messages.text(DocumentCode.DROP_ROW, drop.id());
        }
        if (change instanceof Change.ReplaceRow replace) {
            return Messages.text(DocumentCode.REPLACE_ROW, replace.row().id());
        }
        return change instanceof Change.SetRest rest
                ? Messages.text(DocumentCode.SET_REST, rest.key())
                : Messages.text(DocumentCode.SET_SCENARIOS);
    }
}
