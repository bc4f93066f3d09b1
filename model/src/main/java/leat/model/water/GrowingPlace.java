package leat.model.water;

import leat.model.fault.Require;

/**
 * What makes a planting use more or less water than its kind does.
 *
 * @param density      of the planting: low when young or sparse, high in several layers
 * @param microclimate low in shade and shelter, high beside paving and walls that reflect heat, and in wind
 */
public record GrowingPlace(Grade density, Grade microclimate) {

    public static final GrowingPlace AVERAGE = new GrowingPlace(Grade.AVERAGE, Grade.AVERAGE);

    public GrowingPlace {
        Require.present("growing place", "density", density);
        Require.present("growing place", "microclimate", microclimate);
    }

    public GrowingPlace withDensity(Grade grade) {
        return new GrowingPlace(grade, microclimate);
    }

    public GrowingPlace withMicroclimate(Grade grade) {
        return new GrowingPlace(density, grade);
    }

    /** A class of the landscape coefficient method. */
    public enum Grade {
        LOW,
        AVERAGE,
        HIGH
    }
}
