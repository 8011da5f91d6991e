package farwatt.engine;

import farwatt.plan.Table;

/** The columns of sources or switches that the circuit needs. */
final class NodeCells {
    final int base;
    final Col volts;
    final Col portLimit;
    final Col budget;
    final Col guard;
    final Col derateFrom;
    final Col derateRate;
    final Col grantsBy;
    final Col grantFactor;
    private final Columns columns;
    private final Table table;

    NodeCells(Columns columns, Table table) {
        this.columns = columns;
        this.table = table;
        volts = column("volts");
        base = volts.base;
        portLimit = column("port_limit");
        budget = column("budget");
        guard = column("guard");
        derateFrom = column("derate_from");
        derateRate = column("derate_rate");
        grantsBy = column("grants_by");
        grantFactor = column("grant_factor");
    }

    final Col column(String key) {
        return columns.need(table, key);
    }
}
