package leat.model.plan;

import leat.model.catalog.ElectricalTables;
import leat.model.fault.InvalidValueException;
import leat.model.power.Cable;
import leat.model.power.CodeFamily;
import leat.model.power.Conduit;

/** Checks that the sizes of conductors and conduits that a yard names are in the catalogue. */
final class PowerKeys {

    private final ElectricalTables tables;
    private final CodeFamily family;

    PowerKeys(ElectricalTables tables, CodeFamily family) {
        this.tables = tables;
        this.family = family;
    }

    void check(Cable cable) {
        cable.conductor().ifPresent(size -> named("cable " + cable.id(), () -> tables.conductor(family, size)));
    }

    void check(Conduit conduit) {
        String thing = "conduit " + conduit.id();
        named(thing, () -> tables.conduits(conduit.series()));
        conduit.size().ifPresent(size -> named(thing, () -> tables.conduit(conduit.series(), size)));
        conduit.occupied().forEach(wires -> named(thing, () -> tables.conductor(family, wires.size())));
    }

    private static void named(String thing, Runnable row) {
        try {
            row.run();
        } catch (InvalidValueException e) {
            throw e.within(thing);
        }
    }
}
