package farwatt.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SandboxTest {
    @TempDir
    Path folder;

    private Scripts.Ran inFolder(String name, String text) throws Exception {
        Path file = folder.resolve("own").resolve(name);
        Files.createDirectories(folder.resolve("own"));
        Files.writeString(file, text);
        return Scripts.run(Script.file(file), Scripts.ferry());
    }

    @Test
    void aProbeThatTriesEveryWayOutFindsNone() throws Exception {
        Path secret = Files.writeString(folder.resolve("secret.js"), "export const secret = 'found it';");
        Files.createDirectories(folder.resolve("own"));
        Files.createSymbolicLink(folder.resolve("own").resolve("link.js"), secret);
        Files.writeString(folder.resolve("own").resolve("plain.txt"), "export const a = 1;");
        String probe = Files.readString(
                        Path.of(Scripts.ROOT.toString(), "src", "test", "resources", "farwatt", "script", "probe.js"))
                .replace("SECRET", secret.toString())
                .replace("OUT", folder.resolve("written.txt").toString());
        Scripts.Ran ran = inFolder("probe.js", probe);
        assertEquals(Outcome.State.DONE, ran.outcome().state(), ran.outcome().said());
        assertTrue(ran.printed().startsWith("tried "), ran.printed());
        assertTrue(ran.printed().endsWith("found nothing"), ran.printed());
        assertFalse(Files.exists(folder.resolve("written.txt")));
        assertFalse(ran.printed().contains("found it"));
    }

    @Test
    void modulesComeFromTheScriptsOwnFolderAndBelow() throws Exception {
        Files.createDirectories(folder.resolve("own").resolve("parts"));
        Files.writeString(
                folder.resolve("own").resolve("parts").resolve("half.js"),
                "export const half = (path) => plan.get(path) / 2;");
        Scripts.Ran ran = inFolder("main.js", """
                import {half} from './parts/half.js';
                print(half('trunk.length'));
                """);
        assertEquals("47.5", ran.printed(), ran.outcome().said());
    }

    @Test
    void aMistakeInAModuleIsSaidAtItsLine() throws Exception {
        Files.createDirectories(folder.resolve("own"));
        Files.writeString(
                folder.resolve("own").resolve("lib.js"),
                "\nexport function volts() {\n  return plan.get('gat.volts');\n}\n");
        Scripts.Ran ran = inFolder("main.mjs", "import {volts} from './lib.js';\n\nvolts();\n");
        assertTrue(
                ran.outcome().said().startsWith("lib.js, line 3, in volts: "),
                ran.outcome().said());
        assertTrue(
                ran.outcome().said().endsWith("called from main.mjs, line 3"),
                ran.outcome().said());
    }

    @Test
    void whatIsTypedAtTheConsoleHasNoModules() throws IOException {
        Files.writeString(folder.resolve("lib.js"), "export const a = 1;");
        Scripts.Ran ran = Scripts.run(
                Script.line("import('" + folder.resolve("lib.js") + "').then(() => print('in'), () => print('out'))"),
                Scripts.ferry());
        assertEquals("out", ran.printed(), ran.outcome().said());
    }

    @Test
    void spoilingTheLanguageHarmsTheScriptAlone() {
        Scripts.run("""
                JSON.parse = () => 'spoilt';
                Array.prototype.map = () => 'spoilt';
                Object.prototype.extra = 'spoilt';
                for (const name of ['throwing', 'columns', 'points', 'level', 'from', 'get', 'value']) {
                  Object.defineProperty(Object.prototype, name, {get() { return 'spoilt'; }, configurable: true});
                }
                Array.prototype[Symbol.iterator] = function* () { yield 'spoilt'; };
                Function.prototype.call = Function.prototype.apply = () => 'spoilt';
                Error.prepareStackTrace = () => 'spoilt';
                Object.setPrototypeOf(Error.prototype, {message: 'spoilt'});
                Promise.prototype.then = () => 'spoilt';
                Symbol.for('left behind').description;
                globalThis.leftBehind = 'spoilt';
                Object.defineProperty(globalThis, 'plan', {value: 'spoilt'});
                """);
        Scripts.Ran ran = Scripts.run("""
                print(plan.rows('zones').map((zone) => zone.id), ({}).extra, ({}).throwing, typeof leftBehind);
                print(Math.max.call(null, 1, 2), [...'ab'], Object.keys(Object.prototype), typeof Error.prepareStackTrace);
                try { plan.get('nothing'); } catch (e) { print(e.message.slice(0, 15), e.stack.slice(0, 9)); }
                """);
        assertEquals("""
                ["office", "quay"] nothing nothing undefined
                2 ["a", "b"] [] undefined
                Found "nothing" PlanError""", ran.printed(), ran.outcome().said());
    }
}
