package farwatt.review;

import farwatt.plan.Plan.Spot;
import farwatt.plan.Table;
import java.util.ArrayList;
import java.util.List;

/** What can be tried for a finding, by what it is about. */
final class Ladders {
    private final Ground ground;
    private final List<Ladder> all = new ArrayList<>();
    private final CableLadders cable;
    private final GearLadders gear;
    private final LoadLadders load;

    private Ladders(Ground ground) {
        this.ground = ground;
        cable = new CableLadders(ground, all);
        gear = new GearLadders(ground, all);
        load = new LoadLadders(ground, all);
    }

    static List<Ladder> of(Ground ground) {
        Ladders ladders = new Ladders(ground);
        for (ReviewCode code : ReviewCode.values()) {
            if (code.key().equals(ground.finding().code())) {
                ladders.by(code);
            }
        }
        return ladders.all;
    }

    private void by(ReviewCode code) {
        switch (code) {
            case NO_OPERATING_POINT, NO_OPERATING_POINT_TREE, OVERLOAD, RIGHT, FLOOR_SWITCH, RESERVE, START_NEVER ->
                power();
            case PORT_LIMIT, DEMOTED_SHORT, FLOOR, PASSIVE_FLOOR, NO_CLASS -> {
                power();
                ground.way().stream().limit(1).forEach(load::moved);
            }
            case DARK, DARK_SWITCH -> {
                power();
                ground.subject().ifPresent(load::priority);
                ground.way().stream().limit(1).forEach(cable::earlier);
                ground.way().stream().limit(1).forEach(load::moved);
            }
            case OVER_CLASS -> ground.subject().ifPresent(gear::deviceClass);
            case RUNAWAY, HOT_WIRE, WIRE_AMPS -> {
                power();
                ground.way().stream().limit(1).forEach(feed -> cable.heat(Ground.run(feed)));
            }
            case NEED -> needs();
            default -> site(code);
        }
    }

    private void power() {
        ground.way().forEach(feed -> {
            cable.power(feed);
            cable.runLimit(feed);
            load.cooler(feed);
        });
        ground.nodes().forEach(gear::power);
        ground.nodes().stream().limit(1).forEach(load::lessen);
    }

    /** A need may speak of anything: what feeds all others is tried. */
    private void needs() {
        for (Tree.Feed feed : ground.scene().tree().feeds()) {
            if (feed.to().table() == Table.SWITCHES && all.size() < 50) {
                cable.power(feed);
                gear.power(feed.to());
                gear.power(feed.from());
                load.lessen(feed.to());
            }
        }
    }

    private void site(ReviewCode code) {
        Spot row = ground.subject().orElse(new Spot(Table.PLAN, 0));
        switch (code) {
            case EXTRA_LOW, VOLTS_MOST -> gear.lessVolts(row);
            case WATTS_LIMITED -> gear.lessWatts(row);
            case PORTS -> {
                gear.ports(row);
                ground.scene().tree().below(row).stream().skip(1).limit(4).forEach(load::moved);
            }
            case PORT_NUMBER, PORT_TWICE -> ground.way().stream().limit(1).forEach(cable::port);
            case CLAD -> cable.copper(row);
            case THIN_CABLE -> cable.gauge(row);
            case CORD -> cable.data(row);
            case REACH -> {
                cable.data(row);
                cable.shorter(row);
                ground.way().stream().limit(1).forEach(load::cooler);
            }
            case HOPS, HOPS_PORT -> {
                ground.way().stream().limit(1).forEach(load::moved);
                ground.nodes().forEach(gear::power);
            }
            case LINK -> gear.link(row);
            case SHEATH -> cable.sheath(row);
            case INGRESS -> gear.rated(row, "ingress", need(row), TryPhrase.TRY_RATED);
            case TOO_COLD -> gear.rated(row, "coldest_rated", air(), TryPhrase.TRY_RATED_COLD);
            case TOO_HOT -> {
                gear.rated(row, "hottest_rated", air(), TryPhrase.TRY_RATED_HOT);
                load.shade(row);
            }
            default -> {
                // what was only mistyped has no other remedy than its sentence says
            }
        }
    }

    private String air() {
        return Say.cell(ground.finding().value(), Say.CELSIUS);
    }

    private String need(Spot row) {
        return ground.scene()
                .calc()
                .related(row.table(), row.place(), "zone")
                .map(zone -> ground.scene().text(Table.ZONES, zone.place(), "ingress_need"))
                .orElse("");
    }
}
