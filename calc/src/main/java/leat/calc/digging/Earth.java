package leat.calc.digging;

import leat.model.finding.Citation;
import leat.model.finding.Standing;
import leat.model.quantity.Ratio;

/**
 * Earth by how much it swells when dug, as a share of its volume in the bank. Handbook ranges are wide; the figure used is
 * the middle of the range.
 */
public enum Earth {
    SAND("sand or gravel", 5, 15),
    LOAM("loam", 10, 35),
    COMMON("common earth", 20, 45),
    CLAY("clay", 30, 60),
    ROCK("rock", 50, 80);

    /** Where the ranges were read. */
    public static final Citation SOURCE = new Citation(
            "Peurifoy, Construction Planning, Equipment, and Methods, table of representative swell; middle of the range",
            Standing.PUBLISHED);

    private final String label;
    private final double leastPercent;
    private final double mostPercent;

    Earth(String label, double leastPercent, double mostPercent) {
        this.label = label;
        this.leastPercent = leastPercent;
        this.mostPercent = mostPercent;
    }

    public String label() {
        return label;
    }

    /** The middle of the range. */
    public Ratio swell() {
        return Ratio.percent((leastPercent + mostPercent) / 2);
    }

    public Ratio leastSwell() {
        return Ratio.percent(leastPercent);
    }

    public Ratio mostSwell() {
        return Ratio.percent(mostPercent);
    }

    /**
     * The earth of a soil by its texture; common practice, no source.
     *
     * @param texture of the catalogue of soils, such as {@code silt loam}; any other is common earth
     */
    public static Earth of(String texture) {
        return switch (texture) {
            case "sand", "loamy sand" -> SAND;
            case "sandy loam", "loam", "silt loam", "silt" -> LOAM;
            case "silty clay", "clay" -> CLAY;
            default -> COMMON; // silty clay loam, and what nobody stated
        };
    }
}
