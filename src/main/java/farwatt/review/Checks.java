package farwatt.review;

import farwatt.report.Notice;
import java.util.List;

/** Every check there is. */
final class Checks {
    private Checks() {}

    /** What is the same in every corner. */
    static List<Check> always(Scene scene) {
        return List.of(
                new SafetyChecks(scene),
                new SocketChecks(scene),
                new PassiveChecks(scene),
                new DemotionChecks(scene),
                new CableChecks(scene),
                new DataChecks(scene),
                new GearChecks(scene),
                new WayChecks(scene),
                new ReadingChecks(scene),
                new ChoiceChecks(scene));
    }

    /** What goes by the corner looked at. */
    static List<Check> inEachCorner(Scene scene, List<Notice> notices) {
        return List.of(
                new FaultChecks(scene, notices),
                new SupplyChecks(scene),
                new PortChecks(scene),
                new VoltsChecks(scene),
                new GrantChecks(scene),
                new ClassChecks(scene),
                new HoldChecks(scene),
                new StartChecks(scene),
                new WireChecks(scene),
                new ReachChecks(scene),
                new NeedChecks(scene, notices));
    }
}
