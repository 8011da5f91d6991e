package farwatt.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class IngressTest {
    private static Ingress.Fit fit(String rated, String need) {
        return Ingress.of(rated).orElseThrow().fit(Ingress.of(need).orElseThrow());
    }

    @Test
    void digitsCountOnTheirOwn() {
        assertEquals(Ingress.Fit.ENOUGH, fit("IP66", "IP54"));
        assertEquals(Ingress.Fit.ENOUGH, fit("ip 65", "IP65"));
        assertEquals(Ingress.Fit.TOO_LITTLE, fit("IP44", "IP54"));
        assertEquals(Ingress.Fit.TOO_LITTLE, fit("IP64", "IP65"));
    }

    @Test
    void immersionAndHotJetsAreNoJets() {
        assertEquals(Ingress.Fit.OTHER_WATER, fit("IP67", "IP66"));
        assertEquals(Ingress.Fit.OTHER_WATER, fit("IP69K", "IP66"));
        assertEquals(Ingress.Fit.OTHER_WATER, fit("IP69", "IP67"));
        assertEquals(Ingress.Fit.ENOUGH, fit("IP66/IP67", "IP66"));
        assertEquals(Ingress.Fit.ENOUGH, fit("IP68", "IP67"));
        assertEquals(Ingress.Fit.ENOUGH, fit("IP67", "IP54"));
        assertEquals(Ingress.Fit.TOO_LITTLE, fit("IP66", "IP67"));
    }

    @Test
    void anOpenDigitLeavesItOpen() {
        assertEquals(Ingress.Fit.UNKNOWN, fit("IPX6", "IP66"));
        assertEquals(Ingress.Fit.UNKNOWN, fit("IP6X", "IP66"));
        assertEquals(Ingress.Fit.ENOUGH, fit("IPX6", "IPX5"));
        assertEquals(true, Ingress.of("weatherproof").isEmpty());
    }
}
