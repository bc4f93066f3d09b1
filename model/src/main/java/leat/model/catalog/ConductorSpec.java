package leat.model.catalog;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.power.CodeFamily;
import leat.model.quantity.Area;
import leat.model.quantity.Current;
import leat.model.quantity.Volume;

/**
 * A single copper conductor of one size.
 *
 * @param size        such as {@code 12} (AWG) or {@code 2.5} (mm²); the family says which
 * @param insulated   area that it takes in a conduit, with its insulation
 * @param columns     what the tables give for each temperature that its insulation may have; coolest first
 * @param mostBreaker greatest breaker of a small conductor, whatever its ampacity; empty where there is no such limit
 * @param boxRoom     volume that it takes in a box; empty where the family counts boxes otherwise
 */
public record ConductorSpec(
        CodeFamily family,
        String size,
        Copper metal,
        Area insulated,
        List<InsulationColumn> columns,
        Optional<Current> mostBreaker,
        Optional<Volume> boxRoom,
        Citation citation) {

    public ConductorSpec {
        Require.present("conductor", "family", family);
        Require.name("conductor", "size", size);
        String thing = "conductor " + size;
        Require.present(thing, "metal", metal);
        Require.moreThan(thing, "insulated", insulated, metal.area());
        columns = Require.unique("column of " + thing, columns, InsulationColumn::celsius);
        Require.present(thing, "mostBreaker", mostBreaker);
        Require.present(thing, "boxRoom", boxRoom);
        Require.present(thing, "citation", citation);
    }

    /** Finest first. */
    public static Comparator<ConductorSpec> byArea() {
        return Comparator.comparing(one -> one.metal().area());
    }

    /** Such as {@code 12 AWG} or {@code 2.5 mm²}. */
    public String label() {
        return family == CodeFamily.NFPA_70 ? size + " AWG" : size + " mm²";
    }

    public Optional<InsulationColumn> column(int celsius) {
        return columns.stream().filter(one -> one.celsius() == celsius).findFirst();
    }

    /** What the tables let it carry with insulation for that temperature: nothing where they have no figure for it. */
    public Current ampacity(int celsius) {
        return column(celsius).flatMap(InsulationColumn::ampacity).orElse(Current.ZERO);
    }
}
