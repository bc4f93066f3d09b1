package leat.draw;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The sans-serif of our sheets, known by its advance widths alone, so that text is measured alike on every machine.
 * The table (resource liberation-sans-advances.csv) was read from the files of a font of a free licence; its widths are
 * those that the common sans-serif families share.
 */
public final class Typeface {

    /** What a browser or an editor should look for; all of them have these widths, but the last. */
    public static final String FAMILIES = "Liberation Sans, Arimo, Arial, Helvetica, sans-serif";

    /** Height of capitals over font size. */
    public static final double CAPITAL_RATIO = 1409.0 / 2048;

    private static final double UNITS = 2048;

    /** For a character that the table does not hold: as wide as a digit. */
    private static final int DEFAULT_ADVANCE = 1139;

    private static final Typeface SANS = read("liberation-sans-advances.csv");

    private final SortedMap<Integer, int[]> advances;

    private Typeface(SortedMap<Integer, int[]> advances) {
        this.advances = advances;
    }

    public static Typeface sans() {
        return SANS;
    }

    /** Width of a line of text set in this size, in the unit of the size. */
    public double width(String text, double fontSize, boolean bold) {
        long units = 0;
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            int[] advance = advances.get(text.codePointAt(i));
            units += advance == null ? DEFAULT_ADVANCE : advance[bold ? 1 : 0];
        }
        return units * fontSize / UNITS;
    }

    private static Typeface read(String resource) {
        SortedMap<Integer, int[]> advances = new TreeMap<>();
        try (InputStream stream = Typeface.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new AssertionError("resource missing: " + resource);
            }
            BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.startsWith("#") || line.startsWith("code_point")) {
                    continue;
                }
                String[] cells = line.split(",", -1);
                int[] pair = {Integer.parseInt(cells[1]), Integer.parseInt(cells[2])};
                advances.put(Integer.parseInt(cells[0], 16), pair);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Typeface(advances);
    }
}
