package farwatt.engine;

import farwatt.circuit.BundleHeat;
import farwatt.circuit.Conductor;
import farwatt.plan.Table;
import farwatt.standard.CableCategory;

/**
 * Thermal resistance of what each run lies in (our calibration, see {@link BundleHeat}): alone, or in a bundle with
 * the plan's other runs and cables that are not in the plan.
 */
final class BundleShapes {
    private static final int OTHER_CONDUCTORS = 8;
    private static final int TRAY = 1;
    private static final int CONDUIT = 2;
    private static final int INSULATED = 3;

    private final Practice practice;
    private final Col heatMargin;
    private final Col diameter;
    private final Col others;
    private final Col othersAmps;
    private final Col othersGauge;
    private final Col othersDiameter;
    /** The cells of a bundle that make it what it is. */
    private final Col[] own;

    private final Col setting;
    private final Col insulation;
    private final int[][] members;
    private final int conduitDiameter;
    private final int laySolid;
    private final int bundlePacking;
    private final int bundleConductivity;
    private final int insulationConductivity;
    private final int surfaceOpen;
    private final int surfaceTray;
    private final int surfaceConduit;

    private final int[] cables;
    private final double[] squares;
    private final double[] conduitSquares;
    private final double[] othersWatts;

    /** @param members by place of a bundle: its runs that are in use */
    BundleShapes(Layout layout, Columns columns, Practice practice, int[][] members) {
        this.practice = practice;
        this.members = members;
        heatMargin = columns.need(Table.PLAN, "heat_margin");
        diameter = columns.need(Table.RUNS, "cable_diameter");
        others = columns.need(Table.BUNDLES, "others");
        othersAmps = columns.need(Table.BUNDLES, "others_amps");
        othersGauge = columns.need(Table.BUNDLES, "others_gauge");
        othersDiameter = columns.need(Table.BUNDLES, "others_diameter");
        own = new Col[] {others, othersAmps, othersGauge, othersDiameter};
        setting = columns.need(Table.ZONES, "setting");
        insulation = columns.need(Table.ZONES, "insulation");
        conduitDiameter = practice.place("conduit_diameter");
        laySolid = practice.place("lay_solid");
        bundlePacking = practice.place("bundle_packing");
        bundleConductivity = practice.place("bundle_conductivity");
        insulationConductivity = practice.place("insulation_conductivity");
        surfaceOpen = practice.place("surface_open");
        surfaceTray = practice.place("surface_tray");
        surfaceConduit = practice.place("surface_conduit");
        int bundles = layout.size(Table.BUNDLES);
        cables = new int[bundles];
        squares = new double[bundles];
        conduitSquares = new double[bundles];
        othersWatts = new double[bundles];
    }

    /** Diameter of a category's cable in metres, for an empty cell. */
    static RowRule usualDiameter(Col category) {
        var all = CableCategory.all();
        var words = ((farwatt.catalogue.Kind.Choice) category.name.kind()).words();
        double[] byWord = new double[words.size()];
        for (CableCategory c : all) {
            byWord[words.indexOf(c.word())] = c.diameter();
        }
        return place -> {
            double word = category.v[place];
            return Double.isNaN(word) ? word : byWord[(int) word];
        };
    }

    /** Adds up one bundle; to be called before {@link #rth} and {@link #othersWatts} are asked for its runs. */
    void measure(int bundle) {
        double widest = practice.at(conduitDiameter);
        double foreign = others.v[bundle];
        double foreignDiameter = othersDiameter.v[bundle];
        int count = foreign > 0 ? (int) foreign : 0;
        double capped = Math.min(foreignDiameter, widest);
        double sum = count == 0 ? 0 : count * foreignDiameter * foreignDiameter;
        double cappedSum = count == 0 ? 0 : count * capped * capped;
        for (int run : members[bundle]) {
            double d = diameter.v[run - diameter.base];
            if (!Double.isNaN(d)) {
                double c = Math.min(d, widest);
                sum += d * d;
                cappedSum += c * c;
                count++;
            }
        }
        cables[bundle] = count;
        squares[bundle] = sum;
        conduitSquares[bundle] = cappedSum;
        double amps = othersAmps.v[bundle];
        double ohms = Conductor.ohmsPerMetre(othersGauge.v[bundle], Conductor.COPPER_OHM_METRES, practice.at(laySolid));
        othersWatts[bundle] =
                foreign > 0 ? ((int) foreign) * BundleHeat.wattsPerMetre(OTHER_CONDUCTORS, amps, ohms) : 0;
    }

    /** First fault in a bundle's own cells, 0 if there is none. */
    double faultOf(int bundle) {
        for (Col col : own) {
            if (Double.isNaN(col.v[bundle])) {
                return col.v[bundle];
            }
        }
        return 0;
    }

    int cables(int bundle) {
        return cables[bundle];
    }

    /**
     * Kelvins a run's surroundings warm by for each watt a metre of the whole bundle, margin included.
     *
     * @param run place of the run
     * @param bundle place of its bundle, −1 for none
     * @param zone place of the zone it is reckoned in, −1 for none
     */
    double rth(int run, int bundle, int zone) {
        double margin = heatMargin.v[0];
        double own = diameter.v[run];
        double lies = zone < 0 ? 0 : setting.v[zone];
        if (Double.isNaN(margin) || Double.isNaN(lies) || Double.isNaN(own)) {
            return Double.isNaN(margin) ? margin : Double.isNaN(lies) ? lies : own;
        }
        if (margin == 0) {
            return 0;
        }
        int how = (int) lies;
        double widest = how == CONDUIT ? Math.min(own, practice.at(conduitDiameter)) : own;
        double sum = bundle < 0 ? widest * widest : how == CONDUIT ? conduitSquares[bundle] : squares[bundle];
        int count = bundle < 0 ? 1 : Math.max(1, cables[bundle]);
        double whole = BundleHeat.diameter(sum, practice.at(bundlePacking));
        double core = practice.at(bundleConductivity);
        if (how == INSULATED) {
            return BundleHeat.insulated(
                    whole,
                    count,
                    insulation.v[zone],
                    practice.at(insulationConductivity),
                    practice.at(surfaceOpen),
                    core,
                    margin);
        }
        int film = how == TRAY ? surfaceTray : how == CONDUIT ? surfaceConduit : surfaceOpen;
        return BundleHeat.inAir(whole, count, practice.at(film), core, margin);
    }

    /** Watts a metre of the bundle's cables that are not in the plan, were their copper at 20 °C. */
    double othersWatts(int bundle) {
        return bundle < 0 ? 0 : othersWatts[bundle];
    }
}
