package farwatt.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import org.apache.poi.ss.util.WorkbookUtil;
import org.junit.jupiter.api.Test;

class SheetNamesTest {
    /** Places of a job, named as people name them. */
    static final List<String> SITES = List.of(
            "Ferry terminal lower hall cameras A",
            "Ferry terminal lower hall cameras B",
            "Quay 1/2",
            "Hall [north]",
            "'Depot'",
            "History",
            "quay",
            "QUAY",
            " ",
            "A:B*C?",
            "Müseum “Courtyard”");

    @Test
    void everyNameBecomesAValidOne() {
        assertEquals(
                List.of(
                        "Ferry terminal lower hall cam~1",
                        "Ferry terminal lower hall cam~2",
                        "Quay 1-2",
                        "Hall -north-",
                        "Depot",
                        "History~1",
                        "quay~1",
                        "QUAY~2",
                        "Sheet",
                        "A-B-C-",
                        "Müseum “Courtyard”"),
                SheetNames.of(SITES));
    }

    @Test
    void aPersonsOwnTailIsNoClash() {
        assertEquals(List.of("quay~1", "quay~2", "Quay~3"), SheetNames.of(List.of("quay~1", "quay", "Quay")));
    }

    @Test
    void aCharacterOfTwoUnitsIsNotCutInTwo() {
        String name = SheetNames.of(List.of("a".repeat(30) + "😀")).get(0);
        assertEquals("a".repeat(30), name);
    }

    @Test
    void whateverIsWantedIsValidAndUnique() {
        long seed = 20250314;
        Random random = new Random(seed);
        for (int round = 0; round < 300; round++) {
            List<String> wanted = random.ints(12, 0, 40)
                    .mapToObj(length -> name(random, length))
                    .toList();
            List<String> names = SheetNames.of(wanted);
            Set<String> folded = new HashSet<>();
            for (String name : names) {
                WorkbookUtil.validateSheetName(name);
                assertTrue(!name.startsWith("'") && !name.endsWith("'"), "seed " + seed + ": " + name);
                assertTrue(folded.add(name.toLowerCase(Locale.ROOT)), "seed " + seed + ": twice " + name);
            }
        }
    }

    private static String name(Random random, int length) {
        String letters = "aAbB'/\\:*?[] ~1é\u0001";
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < length; i++) {
            out.append(letters.charAt(random.nextInt(letters.length())));
        }
        return out.toString();
    }
}
