package leat.model.quantity;

import java.util.function.DoubleFunction;

/** The kind of a quantity: which units it may have and how a figure of it is made. */
public enum Dimension {
    LENGTH("length", Length::new),
    AREA("area", Area::new),
    VOLUME("volume", Volume::new),
    WATER("volume of water", WaterVolume::new),
    PRESSURE("pressure", Pressure::new),
    FLOW("flow", Flow::new),
    VELOCITY("velocity", Velocity::new),
    PRECIPITATION("precipitation rate", PrecipitationRate::new),
    TIME("time span", TimeSpan::new),
    CURRENT("current", Current::new),
    VOLTAGE("voltage", Voltage::new),
    POWER("power", Power::new),
    RESISTANCE("resistance", Resistance::new),
    ANGLE("angle", Angle::new),
    RATIO("ratio", Ratio::new),
    COUNT("count", Count::new);

    private final String label;
    private final DoubleFunction<Quantity> maker;

    Dimension(String label, DoubleFunction<Quantity> maker) {
        this.label = label;
        this.maker = maker;
    }

    /** What a person calls it, such as {@code length}. */
    public String label() {
        return label;
    }

    /** As in "it must be a length". */
    public String withArticle() {
        return ("aeiou".indexOf(label.charAt(0)) < 0 ? "a " : "an ") + label;
    }

    /** The quantity of this dimension with that value in its SI unit. */
    public Quantity of(double si) {
        return maker.apply(si);
    }
}
