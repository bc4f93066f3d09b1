package leat.model.catalog;

import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;
import leat.model.quantity.Ratio;
import leat.model.water.TradeSize;

/**
 * A pipe as it can be bought.
 *
 * @param bore           inside diameter, more than 0
 * @param outside        outside diameter, more than the bore
 * @param rating         greatest pressure at 23 °C (20 °C for EN series)
 * @param hazenWilliamsC roughness coefficient of Hazen and Williams, more than 0
 * @param stock          length of a stick or a coil
 */
public record PipeSpec(
        TradeSize size,
        String material,
        Length bore,
        Length outside,
        Pressure rating,
        Ratio hazenWilliamsC,
        Length stock,
        Citation citation) {

    public PipeSpec {
        Require.present("pipe spec", "size", size);
        String thing = "pipe spec " + size;
        Require.name(thing, "material", material);
        Require.moreThan(thing, "bore", bore, Length.ZERO);
        Require.moreThan(thing, "outside", outside, bore);
        Require.moreThan(thing, "rating", rating, Pressure.ZERO);
        Require.moreThan(thing, "hazenWilliamsC", hazenWilliamsC, Ratio.ZERO);
        Require.moreThan(thing, "stock", stock, Length.ZERO);
        Require.present(thing, "citation", citation);
    }
}
