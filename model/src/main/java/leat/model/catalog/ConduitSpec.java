package leat.model.catalog;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.quantity.Area;
import leat.model.quantity.Length;

/**
 * A conduit or duct of one size.
 *
 * @param series     such as {@code PVC-40}
 * @param size       trade size, such as {@code 3/4}
 * @param title      what it is
 * @param buriedAs   the column of the cover table that it belongs to
 * @param bore       inside diameter; the least where it varies
 * @param area       inside it, as the table prints it
 * @param outside    outside diameter
 * @param bendRadius least radius of a bend, to its centre line
 * @param stock      length of a stick or a coil
 */
public record ConduitSpec(
        String series,
        String size,
        String title,
        BuriedAs buriedAs,
        Length bore,
        Area area,
        Optional<Length> outside,
        Optional<Length> bendRadius,
        Optional<Length> stock,
        Citation citation) {

    public ConduitSpec {
        Require.name("conduit", "series", series);
        Require.name("conduit " + series, "size", size);
        String thing = "conduit " + size + " " + series;
        Require.present(thing, "title", title);
        Require.present(thing, "buriedAs", buriedAs);
        Require.moreThan(thing, "bore", bore, Length.ZERO);
        Require.moreThan(thing, "area", area, Area.ZERO);
        Require.present(thing, "outside", outside);
        outside.ifPresent(one -> Require.moreThan(thing, "outside", one, bore));
        Require.present(thing, "bendRadius", bendRadius);
        Require.present(thing, "stock", stock);
        Require.present(thing, "citation", citation);
    }
}
