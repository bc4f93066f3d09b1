package leat.model.plan;

import java.util.function.Supplier;
import leat.model.catalog.ElectricalTables;
import leat.model.fault.InvalidValueException;
import leat.model.power.CodeFamily;
import leat.model.power.Conduit;
import leat.model.power.PowerSystem;

/** Checks that every size and series that the power system names is in the tables of its family. */
final class PowerKeys {

    private final ElectricalTables tables;
    private final CodeFamily family;

    private PowerKeys(ElectricalTables tables, CodeFamily family) {
        this.tables = tables;
        this.family = family;
    }

    static void check(Yard yard, ElectricalTables tables) {
        var keys = new PowerKeys(tables, yard.codeFamily());
        PowerSystem power = yard.power();
        power.conduits().forEach(keys::check);
        power.powerCables()
                .forEach(cable -> cable.conductor().ifPresent(size -> keys.conductor("cable " + cable.id(), size)));
        power.valveCables()
                .forEach(cable ->
                        cable.conductor().ifPresent(size -> keys.conductor("valve wires " + cable.id(), size)));
    }

    private void check(Conduit conduit) {
        String thing = "conduit " + conduit.id();
        named(thing, () -> tables.conduits(conduit.series()));
        conduit.size().ifPresent(size -> named(thing, () -> tables.conduit(conduit.series(), size)));
        conduit.occupied().forEach(wires -> conductor(thing, wires.size()));
    }

    private void conductor(String thing, String size) {
        named(thing, () -> tables.conductor(family, size));
    }

    /** The refusal of the tables, with the name of the thing that asked. */
    private static <T> void named(String thing, Supplier<T> row) {
        try {
            row.get();
        } catch (InvalidValueException e) {
            throw e.within(thing);
        }
    }
}
