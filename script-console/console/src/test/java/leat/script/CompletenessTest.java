package leat.script;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** When Enter runs an entry, and when it asks for another line. */
@Tag("law")
class CompletenessTest {

    @TempDir
    static Path folder;

    private static SessionTrial javaScript;
    private static SessionTrial java;

    @BeforeAll
    static void open() {
        javaScript = SessionTrial.inJavaScript(folder);
        java = SessionTrial.inJava(folder);
    }

    @AfterAll
    static void close() {
        javaScript.close();
        java.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "yard(",
                "yard(\"x\").with(\n  feet(3),",
                "function f() {",
                "if (true) {",
                "1 +",
                "let x =",
                "[1, 2,",
                "/* a comment",
                "`a text\nof lines",
                "rotor(\"R\", at(0, 0)).",
            })
    void moreMustFollow(String text) {
        assertEquals(false, javaScript.session().isComplete(text), text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "yard(\"x\")",
                "let x",
                "let x = 3; const y = 4",
                "function f() { return 1 }",
                "3)",
                "\"abc",
                "// only a comment",
                "/* closed */",
                "`a ${1}`",
                "/ab+`/.test(\"x\")",
                "let s = \"it's `so`\"",
            })
    void itIsWhole(String text) {
        assertEquals(true, javaScript.session().isComplete(text), text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "yard(",
                "int f() {",
                "class X {",
                "for (int i = 0; i < 3; i++) {",
                "/* a comment",
                "var x =",
                "1 +"
            })
    void moreMustFollowInJava(String text) {
        assertEquals(false, java.session().isComplete(text), text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "yard(\"x\")",
                "var x = 3",
                "var x = 3; var y = 4;",
                "int f() { return 1; }",
                "// only",
                "",
                "\"abc"
            })
    void itIsWholeInJava(String text) {
        assertEquals(true, java.session().isComplete(text), text);
    }

    @Test
    void onlyNamesAtTheTopAreDeclaredAnew() {
        TopLevel entry =
                TopLevel.of("let a = 1; { let b = 2 } const c = `let d`; for (let e = 0; e < 1; e++) {} // let f");
        assertEquals(List.of("a", "c"), entry.names());
        assertEquals(
                "var a = 1; { let b = 2 } var   c = `let d`; for (let e = 0; e < 1; e++) {} // let f",
                entry.redeclarable());
    }
}
