package leat.calc.digging;

import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.quantity.Volume;

/**
 * What sharing trenches saves, against a trench of its own for each thing along the same way: each as deep as its own
 * cover asks and as wide as it needs alone.
 *
 * @param separate       length of those trenches
 * @param separateBank   volume of those trenches
 * @param ofLength       share of the length that is not dug
 * @param ofVolume       share of the volume that is not dug; negative where things that must lie apart make one trench
 *     larger than several
 */
public record DigSaving(Length separate, Volume separateBank, Ratio ofLength, Ratio ofVolume) {}
