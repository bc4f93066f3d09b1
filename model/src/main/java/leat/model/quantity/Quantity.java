package leat.model.quantity;

/** A figure with its dimension. The set is closed. */
public sealed interface Quantity extends Figure
        permits Length,
                Area,
                Volume,
                WaterVolume,
                Pressure,
                Flow,
                Velocity,
                PrecipitationRate,
                TimeSpan,
                Current,
                Voltage,
                Power,
                Resistance,
                Angle,
                Ratio,
                Count {

    /** The value in the SI unit of its dimension; degrees for an angle, a pure number for a ratio or a count. */
    @Override
    double si();

    Dimension dimension();
}
