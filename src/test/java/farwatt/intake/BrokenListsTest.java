package farwatt.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.plan.Edit;
import farwatt.plan.Plan;
import farwatt.plan.Rows;
import farwatt.report.Cancel;
import farwatt.report.Refusal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lists broken at random: refused in one sentence or read with counts that add up, never an exception, never a hang. */
class BrokenListsTest {
    private static final boolean SOAK = Boolean.getBoolean("farwatt.soak");
    private static final int TEXTS = SOAK ? 200_000 : 1_800;
    private static final int WORKBOOKS = SOAK ? 20_000 : 200;
    private static final long MOST_NANOS = 2_000_000_000L;
    private static final List<String> SPICE = List.of(
            "\"",
            "\"\"",
            ";",
            ",",
            "\t",
            "\n",
            "\r",
            "\r\n",
            "\u0000",
            "-",
            "–",
            "/",
            "±",
            "<",
            "NaN",
            "1e999",
            "99999999999",
            "1.234",
            "1,234.5",
            "'",
            "W",
            "mA",
            "@ 48 V",
            "x",
            "(",
            ")",
            "Total",
            "Class 9",
            "PoE++",
            "\ufeff",
            "💡",
            "ß",
            "0x1F",
            "=1/0",
            "²",
            "½",
            "٣",
            "−5",
            "1..2",
            "5 ft 3 in",
            "%");

    @TempDir
    Path folder;

    private long slowest;

    private final PrintStream usual = System.err;
    private final ByteArrayOutputStream noise = new ByteArrayOutputStream();

    @BeforeEach
    void listen() {
        System.setErr(new PrintStream(noise, true, StandardCharsets.UTF_8));
    }

    /** What libraries print is as much of an escape as what they throw. */
    @AfterEach
    void nothingWasPrinted() {
        System.setErr(usual);
        assertEquals("", noise.toString(StandardCharsets.UTF_8));
    }

    @Test
    void brokenTextsNeverEscape() throws Exception {
        long seed = 77001;
        System.out.println("broken texts seed " + seed);
        List<byte[]> originals = files(".csv");
        Random random = new Random(seed);
        for (int i = 0; i < TEXTS; i++) {
            byte[] bytes = originals.get(random.nextInt(originals.size()));
            for (int n = random.nextInt(6); n >= 0; n--) {
                bytes = broken(bytes, random);
            }
            check(bytes, "text " + i + " of seed " + seed);
        }
        System.out.println("slowest " + slowest / 1_000_000 + " ms");
    }

    @Test
    void brokenWorkbooksNeverEscape() throws Exception {
        long seed = 77002;
        System.out.println("broken workbooks seed " + seed);
        List<byte[]> originals = files(".xlsx");
        Random random = new Random(seed);
        for (byte[] sound : originals) {
            // loads the libraries, which is not to count
            read(sound);
        }
        for (int i = 0; i < WORKBOOKS; i++) {
            byte[] bytes = originals.get(random.nextInt(originals.size()));
            boolean zip = bytes.length > 2 && bytes[0] == 'P' && bytes[1] == 'K';
            if (zip && random.nextInt(4) > 0) {
                bytes = brokenPart(bytes, random);
            } else {
                for (int n = random.nextInt(4); n >= 0; n--) {
                    bytes = brokenBytes(bytes, random);
                }
            }
            check(bytes, "workbook " + i + " of seed " + seed);
        }
        System.out.println("slowest " + slowest / 1_000_000 + " ms");
    }

    private List<byte[]> files(String ending) throws IOException {
        try (var all = Files.walk(Lists.file("unseen-blanks").getParent())) {
            List<Path> paths = all.filter(p -> p.toString().endsWith(ending))
                    .filter(p -> !p.toString().contains("120MB"))
                    .sorted()
                    .toList();
            List<byte[]> files = new ArrayList<>();
            for (Path path : paths) {
                byte[] bytes = Files.readAllBytes(path);
                if (bytes.length > 0) {
                    files.add(bytes);
                }
            }
            return files;
        }
    }

    private void read(byte[] bytes) throws IOException {
        Path file = folder.resolve("sound");
        Files.write(file, bytes);
        try {
            Intake.read(file, Wishes.NONE, new Cancel());
        } catch (Refusal refusal) {
            assertTrue(refusal.notice().text().endsWith("."));
        }
    }

    private void check(byte[] bytes, String which) throws IOException {
        Path file = folder.resolve("list");
        Files.write(file, bytes);
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        try {
            Outcome outcome = Intake.read(file, Wishes.NONE, new Cancel());
            int sum = Arrays.stream(RowState.values()).mapToInt(outcome::count).sum();
            assertEquals(outcome.rows(), sum, which);
            Taken taken = TakeIn.into(Plan.EMPTY, outcome, TakeIn.Policy.KEEP, TakeIn.Known.UPDATE);
            if (taken.batch().isPresent()) {
                unique(Edit.apply(Plan.EMPTY, taken.batch().get()).plan(), which);
            }
        } catch (Refusal refusal) {
            assertTrue(refusal.notice().text().endsWith("."), which);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            Files.write(Path.of("target", "broken-list"), bytes);
            throw new AssertionError(which + " kept as target/broken-list", e);
        }
        long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
        slowest = Math.max(slowest, took);
        assertTrue(took < MOST_NANOS, which + " took " + took / 1_000_000 + " ms");
    }

    private static void unique(Plan plan, String which) {
        Set<String> ids = new HashSet<>();
        for (String id : plan.ids()) {
            assertTrue(ids.add(Rows.fold(id)), which + ": " + id + " twice");
        }
    }

    private static byte[] broken(byte[] bytes, Random random) {
        if (random.nextBoolean()) {
            return brokenBytes(bytes, random);
        }
        byte[] spice = SPICE.get(random.nextInt(SPICE.size())).getBytes(StandardCharsets.UTF_8);
        return spliced(bytes, random.nextInt(bytes.length + 1), 0, spice);
    }

    private static byte[] brokenBytes(byte[] bytes, Random random) {
        if (bytes.length == 0) {
            return new byte[] {(byte) random.nextInt(256)};
        }
        int at = random.nextInt(bytes.length);
        int length = Math.min(bytes.length - at, 1 + random.nextInt(40));
        return switch (random.nextInt(5)) {
            case 0 -> {
                byte[] changed = bytes.clone();
                changed[at] = (byte) random.nextInt(256);
                yield changed;
            }
            case 1 -> spliced(bytes, at, length, new byte[0]);
            case 2 -> spliced(bytes, at, 0, Arrays.copyOfRange(bytes, at, at + length));
            case 3 -> Arrays.copyOf(bytes, 1 + random.nextInt(bytes.length));
            default -> {
                byte[] noise = new byte[1 + random.nextInt(8)];
                random.nextBytes(noise);
                yield spliced(bytes, at, 0, noise);
            }
        };
    }

    private static byte[] spliced(byte[] bytes, int at, int without, byte[] with) {
        byte[] result = new byte[bytes.length - without + with.length];
        System.arraycopy(bytes, 0, result, 0, at);
        System.arraycopy(with, 0, result, at, with.length);
        System.arraycopy(bytes, at + without, result, at + with.length, bytes.length - at - without);
        return result;
    }

    /** A workbook whose archive is sound but one part of which is not. */
    private static byte[] brokenPart(byte[] bytes, Random random) throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), zip.readAllBytes());
            }
        } catch (IOException cutOff) {
            return brokenBytes(bytes, random);
        }
        if (parts.isEmpty()) {
            return brokenBytes(bytes, random);
        }
        List<String> names = List.copyOf(parts.keySet());
        String name = names.get(random.nextInt(names.size()));
        byte[] part = parts.getOrDefault(name, bytes);
        for (int n = random.nextInt(3); n >= 0; n--) {
            part = random.nextInt(3) == 0 ? brokenBytes(part, random) : otherDigit(part, random);
        }
        parts.put(name, part);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> entry : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
                zip.closeEntry();
            }
        }
        return out.toByteArray();
    }

    /** Keeps the XML sound: one digit or letter for another. */
    private static byte[] otherDigit(byte[] part, Random random) {
        byte[] changed = part.clone();
        for (int tries = 0; tries < 50 && changed.length > 0; tries++) {
            int at = random.nextInt(changed.length);
            if (changed[at] >= '0' && changed[at] <= '9') {
                changed[at] = (byte) ('0' + random.nextInt(10));
                return changed;
            }
        }
        return changed;
    }
}
