package farwatt.window.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import farwatt.report.Code;
import farwatt.report.Messages;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class MessagesTest {
    @Test
    void everyCodeHasASentenceAndEverySentenceACode() {
        Set<String> keys =
                Arrays.stream(ConsoleCode.values()).map(Code::key).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(keys, Messages.all("console").keySet());
        for (ConsoleCode code : ConsoleCode.values()) {
            assertTrue(!Messages.pattern(code).isBlank(), code.key());
        }
    }
}
