package farwatt.script;

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
                Arrays.stream(ScriptCode.values()).map(Code::key).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(keys, Messages.all("script").keySet());
        for (ScriptCode code : ScriptCode.values()) {
            assertTrue(!Messages.pattern(code).isBlank(), code.key());
        }
    }
}
