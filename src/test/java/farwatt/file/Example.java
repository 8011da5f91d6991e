package farwatt.file;

import farwatt.report.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;

/** The example plan of the tests, in canonical form. */
final class Example {
    private Example() {}

    static byte[] bytes() throws IOException {
        try (InputStream in = Example.class.getResourceAsStream("ferry-landing.farwatt.json")) {
            return Objects.requireNonNull(in).readAllBytes();
        }
    }

    static Opened opened() throws IOException, Refusal {
        return PlanReader.read(bytes(), "ferry-landing.farwatt.json");
    }
}
