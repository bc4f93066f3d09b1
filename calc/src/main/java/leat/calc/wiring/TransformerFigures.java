package leat.calc.wiring;

import leat.model.id.TransformerId;
import leat.model.quantity.Power;
import leat.model.quantity.Ratio;

/**
 * What a transformer gives.
 *
 * @param load   all its lamps, and what their cables lose
 * @param loaded load over rating
 */
public record TransformerFigures(TransformerId id, Power load, Power rating, Ratio loaded) {}
