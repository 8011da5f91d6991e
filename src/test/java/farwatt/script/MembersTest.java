package farwatt.script;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MembersTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            sweep | sweep({over: {'trunk.gauge': ['22 AWG', '24 AWG']}, read: ['gate.reserve_share']})
            grow | grow({copy: 'cam 1', until: 'gate.reserve_share < reserve_target', most: 2})
            limit | limit({vary: {'trunk.length': ['1 m', '300 m']}, holds: 'gate.powered'})
            spread | spread({vary: {'trunk.length': '95 m ± 5 %'}, runs: 10, read: ['gate.reserve_share']})
            sensitivity | sensitivity({read: 'gate.reserve_share'})
            room | room()
            table | table([{a: 1}])
            """)
    void whatIsOfferedIsThereAndNothingIsMissing(String kind, String call) {
        assertEquals(Optional.of(kind), Members.kind("let found = " + call, "found"));
        Scripts.Ran ran = Scripts.run("const found = " + call + ";\nprint([...new Set(["
                + "'show', 'picture', 'save', 'rows', ...Object.keys(found)])].sort().join(' '));"
                + "print(typeof found.show, typeof found.picture, typeof found.save, typeof found.rows);");
        String offered =
                Members.of(kind).stream().map(Words.Word::name).sorted().reduce("", (a, b) -> a + " " + b);
        assertEquals(
                offered.strip() + "\nfunction function function function",
                ran.printed(),
                ran.outcome().said());
    }
}
