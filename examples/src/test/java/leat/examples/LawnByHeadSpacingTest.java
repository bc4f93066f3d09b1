package leat.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("pinned")
class LawnByHeadSpacingTest {

    @Test
    void comparesFamiliesOfHeads() {
        var bytes = new ByteArrayOutputStream();
        LawnByHeadSpacing.run(new PrintStream(bytes, false, StandardCharsets.UTF_8));
        List<String> lines = bytes.toString(StandardCharsets.UTF_8).lines().toList();
        assertEquals("family     heads  zones  trench    low quarter  findings", lines.get(0));
        assertEquals(5, lines.size());
        assertTrue(lines.get(2).startsWith("spray-4_6     12"), lines.get(2));
    }
}
