package farwatt.engine;

import farwatt.plan.Table;

/** Air temperatures by corner: a zone's, a node's, a run's. Degrees Celsius, sun included. */
final class Air {
    private static final double UNZONED = 20;

    private final Col ambient;
    private final Col hottest;
    private final Col coldest;
    private final Col sun;
    private final int zones;
    private final int[] zoneOf;
    private final Topology topology;

    Air(Layout layout, Columns columns, Topology topology, int[] zoneOf) {
        this.topology = topology;
        this.zoneOf = zoneOf;
        ambient = columns.need(Table.ZONES, "ambient");
        hottest = columns.need(Table.ZONES, "hottest");
        coldest = columns.need(Table.ZONES, "coldest");
        sun = columns.need(Table.ZONES, "sun");
        zones = layout.base(Table.ZONES);
    }

    /** Of a zone's row; of −1 the usual 20 °C. */
    double ofZone(int zone, Corner corner) {
        if (zone < 0) {
            return UNZONED;
        }
        int place = zone - zones;
        double air = switch (corner) {
            case TYPICAL, MOST -> ambient.v[place];
            case HOT, HOTSTART -> hottest.v[place];
            case COLD -> coldest.v[place];
        };
        if (Double.isNaN(air) || !corner.sunShines()) {
            return air;
        }
        double shine = sun.v[place];
        return Double.isNaN(shine) ? shine : air + shine;
    }

    /** The zone that a row names, −1 for none. */
    int zoneCell(int row) {
        return zoneOf[row];
    }

    /** Around a node. */
    double ofNode(int node, Corner corner) {
        return ofZone(zoneOf[node], corner);
    }

    /**
     * The zone a run is reckoned in: its own, else the hotter of its ends' (a tie: where it starts), −1 for none.
     */
    int zoneOfRun(int run, Corner corner) {
        if (zoneOf[run] >= 0) {
            return zoneOf[run];
        }
        int near = topology.from[run] < 0 ? -1 : zoneOf[topology.from[run]];
        int far = topology.to[run] < 0 ? -1 : zoneOf[topology.to[run]];
        if (near < 0 || far < 0) {
            return Math.max(near, far);
        }
        double there = ofZone(far, corner);
        // which is hotter cannot be told where one has no value, and the run then has none either
        return there > ofZone(near, corner) || Double.isNaN(there) ? far : near;
    }
}
