package farwatt.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import farwatt.plan.Row;
import farwatt.report.Cancel;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Any list of devices written in any of twelve dialects comes back the same. */
class DialectsTest {
    private static final int ROUNDS = Boolean.getBoolean("farwatt.soak") ? 400 : 25;
    private static final String[] WORDS = {
        "gate",
        "Pier",
        "café",
        "Tür",
        "12\" sign",
        "a;b",
        "x,y",
        "tab",
        "\"quoted\"",
        "Gallery",
        "no. 5",
        "über",
        "-end",
        "=sum"
    };

    @TempDir
    Path folder;

    /** How a list is written. */
    private record Dialect(
            String name, char delimiter, char decimal, Charset set, boolean mark, List<String> heading, int extras) {}

    private record Device(String name, String watts, String zone, String metres, String feeder, int port) {}

    private static final List<String> ENGLISH = List.of("Name", "Power (W)", "Area", "Length (m)", "Switch", "Port");
    private static final List<String> GERMAN =
            List.of("Gerät", "Leistung W", "Bereich", "Länge m", "gespeist von", "Anschluss");
    private static final List<String> FRENCH =
            List.of("Désignation", "Puissance [W]", "Emplacement", "Longueur [m]", "Commutateur", "Prise");
    private static final List<String> SPANISH =
            List.of("Nombre", "Potencia (W)", "Ubicación", "Longitud (m)", "Alimentado por", "Puerto");
    private static final List<String> DUTCH =
            List.of("Naam", "Vermogen (W)", "Locatie", "Lengte (m)", "Gevoed door", "Poort");
    private static final List<String> ITALIAN =
            List.of("Nome", "Potenza (W)", "Ubicazione", "Lunghezza (m)", "Alimentato da", "Porta");
    private static final List<String> PORTUGUESE =
            List.of("Nome", "Potência (W)", "Localização", "Comprimento (m)", "Alimentado por", "Porta");
    private static final List<String> POLISH =
            List.of("Nazwa", "Moc (W)", "Lokalizacja", "Długość (m)", "Zasilany z", "Gniazdo");

    private static final List<Dialect> DIALECTS = List.of(
            new Dialect("plain", ',', '.', StandardCharsets.UTF_8, false, ENGLISH, 0),
            new Dialect("marked", ';', ',', StandardCharsets.UTF_8, true, GERMAN, 0),
            new Dialect("wide", '\t', '.', StandardCharsets.UTF_16LE, true, ENGLISH, 1),
            new Dialect("wide unmarked", ';', ',', StandardCharsets.UTF_16BE, false, FRENCH, 0),
            new Dialect("western", ';', ',', Charset.forName("windows-1252"), false, SPANISH, 0),
            new Dialect("comma twice, units below", ',', ',', StandardCharsets.UTF_8, false, DUTCH, 4),
            new Dialect("bars", '|', '.', StandardCharsets.UTF_8, false, ITALIAN, 2),
            new Dialect("titled", ';', '.', Charset.forName("windows-1252"), false, PORTUGUESE, 3),
            new Dialect("Polish", ';', ',', StandardCharsets.UTF_8, false, POLISH, 3),
            new Dialect("pasted", '\t', ',', StandardCharsets.UTF_8, false, GERMAN, 2),
            new Dialect("western points", ',', '.', Charset.forName("windows-1252"), false, FRENCH, 1),
            new Dialect("wide little unmarked", '\t', ',', StandardCharsets.UTF_16LE, false, ENGLISH, 3));

    @Test
    void everyDialectGivesTheSameDevices() throws Exception {
        long seed = 20250301;
        System.out.println("dialects seed " + seed);
        Random random = new Random(seed);
        for (int round = 0; round < ROUNDS; round++) {
            List<Device> devices = devices(random);
            for (Dialect dialect : DIALECTS) {
                Path file = folder.resolve("list.csv");
                Files.write(file, bytes(devices, dialect));
                Outcome outcome = Intake.read(file, Wishes.NONE, new Cancel());
                assertEquals(
                        expected(devices), made(outcome), dialect.name() + " round " + round + "\n" + outcome.report());
                assertEquals(0, outcome.count(RowState.HELD_BACK), dialect.name() + outcome.report());
                assertEquals(devices.size(), outcome.count(RowState.TAKEN), dialect.name() + outcome.report());
            }
        }
    }

    private static List<Device> devices(Random random) {
        Set<String> names = new LinkedHashSet<>();
        int count = 3 + random.nextInt(12);
        while (names.size() < count) {
            names.add(word(random) + " " + word(random) + " " + names.size());
        }
        List<Device> devices = new ArrayList<>();
        for (String name : names) {
            String watts = (1 + random.nextInt(25)) + "." + (1 + random.nextInt(9)) + (1 + random.nextInt(9));
            String metres = (5 + random.nextInt(90)) + (random.nextBoolean() ? "" : "." + (1 + random.nextInt(9)));
            String zone = "Zone " + (char) ('A' + random.nextInt(3));
            devices.add(new Device(name, watts, zone, metres, "SW-" + random.nextInt(3), 1 + random.nextInt(24)));
        }
        return devices;
    }

    private static String word(Random random) {
        return WORDS[random.nextInt(WORDS.length)];
    }

    private static List<String> expected(List<Device> devices) {
        return devices.stream()
                .map(d -> String.join(
                        " | ", d.name, d.watts + " W", d.zone, d.metres + " m", d.feeder, String.valueOf(d.port)))
                .toList();
    }

    private static List<String> made(Outcome outcome) {
        List<String> made = new ArrayList<>();
        for (int i = 0; i < outcome.devices().size(); i++) {
            Row device = outcome.devices().get(i);
            Row run = i < outcome.runs().size() ? outcome.runs().get(i) : Row.of("");
            made.add(String.join(
                    " | ",
                    device.id(),
                    device.text("draw"),
                    device.text("zone"),
                    run.text("length"),
                    run.text("from"),
                    run.text("port")));
        }
        return made;
    }

    private static byte[] bytes(List<Device> devices, Dialect dialect) {
        StringBuilder out = new StringBuilder(dialect.mark ? "\ufeff" : "");
        String end = dialect.extras % 2 == 0 ? "\n" : "\r\n";
        if (dialect.extras >= 2) {
            out.append("Device schedule, revision C").append(end).append(end);
        }
        if (dialect.extras == 4) {
            row(
                    out,
                    dialect.heading.stream()
                            .map(h -> h.replaceFirst(" *\\(.*", ""))
                            .toList(),
                    dialect,
                    end);
            row(
                    out,
                    dialect.heading.stream()
                            .map(h -> h.replaceFirst("^[^(]*", ""))
                            .toList(),
                    dialect,
                    end);
        } else {
            row(out, dialect.heading, dialect, end);
        }
        for (Device d : devices) {
            String watts = d.watts.replace('.', dialect.decimal);
            String metres = d.metres.replace('.', dialect.decimal);
            row(out, List.of(d.name, watts, d.zone, metres, d.feeder, String.valueOf(d.port)), dialect, end);
        }
        if (dialect.extras == 3) {
            row(out, List.of("Total", "", "", "", "", ""), dialect, end);
            out.append("All figures without spare").append(end);
        }
        return out.toString().getBytes(dialect.set);
    }

    private static void row(StringBuilder out, List<String> cells, Dialect dialect, String end) {
        for (int i = 0; i < cells.size(); i++) {
            out.append(i == 0 ? "" : dialect.delimiter);
            String cell = cells.get(i);
            boolean quote = cell.indexOf(dialect.delimiter) >= 0 || cell.startsWith("\"");
            out.append(quote ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell);
        }
        out.append(end);
    }
}
