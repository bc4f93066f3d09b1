package leat.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A script reaches nothing outside its folder and nothing of the host but the surface, and can always be stopped. */
@Tag("law")
class ConfinementTest {

    @TempDir
    Path outside;

    private Path folder;

    @BeforeEach
    void makeFolders() throws IOException {
        folder = Files.createDirectory(outside.resolve("yard")).toRealPath();
        Files.writeString(outside.resolve("secret.txt"), "secret");
        Files.writeString(outside.resolve("secret.js"), "export const secret = 'secret';");
        Files.createSymbolicLink(folder.resolve("link.txt"), outside.resolve("secret.txt"));
        Files.createSymbolicLink(folder.resolve("link.js"), outside.resolve("secret.js"));
        Files.createSymbolicLink(folder.resolve("up"), outside);
    }

    /** Each line tries to lay hands on something; print must never be reached with it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "print(Java.type('java.lang.System').getenv())",
                "print(java.lang.System.getenv())",
                "print(Packages.java.io.File)",
                "print(Polyglot.eval('js', '1'))",
                "print(Polyglot.import('x'))",
                "print(Graal.versionJS)",
                "print(load('secret.js'))",
                "print(loadWithNewGlobal('secret.js'))",
                "print(read('../secret.txt'))",
                "print(quit())",
                "print(require('fs'))",
                "print(process.env)",
                "print(feet(1).getClass())",
                "print(feet(1).class)",
                "print(feet(1).constructor.constructor('return 1')())",
                "print(feet(1).__proto__.getClass())",
                "print(feet(1).host())",
                "print(feet(1).wait())",
                "print(feet(1).notify())",
                "print(garden().hidden())",
                "print(feet.execute)",
                "print(feet.receiver)",
                "print(Length.class)",
                "print(Length.getClassLoader())",
                "print(Secret.word())",
                "print(rotor('R').done().radius.getClass())",
                "print(feet.constructor('return Java')())",
                "print(new Function('return Java')())",
                "print((0, eval)('Java.type'))",
                "print(await (async () => {}).constructor('return java.lang')())",
                "print(this.constructor)",
                "print(globalThis.Java.type)",
                "try { feet('x') } catch (e) { print(e.getClass()) }",
                "try { feet('x') } catch (e) { print(e.getStackTrace()) }",
                "try { feet('x') } catch (e) { print(e.constructor.constructor('return Java')()) }",
                "garden(rotor('R').done()).only(h => { print(h.getClass()) })",
                "garden(rotor('R').done()).only(function (h) { print(arguments.callee) })",
                "print(readText('../secret.txt'))",
                "print(readText('/etc/passwd'))",
                "print(readText('link.txt'))",
                "print(readText('up/secret.txt'))",
                "print(readText('.'))",
                "print(readText('/dev/zero'))",
                "print(readText('a\\u0000b'))",
                "import { secret } from '../secret.js'; print(secret)",
                "import { secret } from './link.js'; print(secret)",
                "import { secret } from './up/secret.js'; print(secret)",
                "import { secret } from 'http://localhost/secret.js'; print(secret)",
                "import { secret } from 'https://localhost/secret.js'; print(secret)",
                "import { secret } from 'data:text/javascript,export const secret = 1'; print(secret)",
                "import { secret } from 'file:///etc/passwd'; print(secret)",
                "import fs from 'fs'; print(fs)",
                "import fs from 'node:fs'; print(fs)",
                "const m = await import('../secret.js'); print(m.secret)",
                "const m = await import('file:' + '//' + '/etc/passwd'); print(m)",
                "print(new Worker('x'))",
                "print(WebAssembly.compile)",
                "print(new SharedArrayBuffer(8))",
                "print(fetch('http://localhost/'))",
                "print(new XMLHttpRequest())",
                "print(setTimeout(() => 1, 1))",
                "Object.defineProperty(globalThis, 'feet', { value: 1 }); print(feet)",
                "delete globalThis.feet; print(1)",
                "globalThis.feet = 1; print(feet)",
                "feet.apply = 1; print(1)",
                "feet(1).metres = 1; print(1)",
                "Length.ofInches = 1; print(1)",
            })
    void anEscapeFails(String script) {
        String answer = Trial.ofToys(folder).run(script);
        assertTrue(answer.startsWith("garden.js:"), answer);
        assertTrue(!answer.contains("secret\"") && !answer.contains(outside.toString()), answer);
    }

    @Test
    void aLinkThatStaysInsideTheFolderCanBeRead() throws IOException {
        Files.writeString(folder.resolve("points.csv"), "x,y");
        Files.createSymbolicLink(folder.resolve("same.csv"), folder.resolve("points.csv"));
        assertEquals("x,y", Trial.ofToys(folder).run("print(readText('same.csv'))"));
    }

    @Test
    void whatIsSpoiltInOneRunIsWholeInTheNext() {
        Trial trial = Trial.ofToys(folder);
        trial.run("Array.from = () => 1; Object.prototype.x = 1; Object.freeze = 1; Function.prototype.call = 1;");
        assertEquals("1 undefined", trial.run("print(Array.from([1])[0] + ' ' + ({}).x)"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "for (;;) {}",
                "for (;;) { try { for (;;) {} } catch (e) {} }",
                "for (;;) { try { for (;;) {} } finally { continue; } }",
                "function f() { try { f() } finally { f() } } f()",
                "garden(rotor('R').done()).only(h => { for (;;) {} })",
                "await new Promise(r => { for (;;) {} })",
                "const step = () => Promise.resolve().then(step); await step()",
                "/^(a|a?)+$/.test('a'.repeat(60) + 'b'); for (;;) {}",
                "[1, 2].sort(() => { for (;;) {} })",
            })
    @Timeout(20)
    void aScriptWithoutEndIsStopped(String script) {
        String answer = Trial.ofToys(folder).run(script, request -> request.withLimit(Duration.ofMillis(500)));
        assertEquals(
                "stopped: the script ran longer than 0.5 s",
                answer.lines().findFirst().orElseThrow().replaceFirst("^garden.js:(\\d+:\\d+: )?\\s*", ""));
    }

    @Test
    void aScriptThatEndsInTimeIsNotStopped() {
        assertEquals("1", Trial.ofToys(folder).run("print(1)", request -> request.withLimit(Duration.ofSeconds(30))));
    }
}
