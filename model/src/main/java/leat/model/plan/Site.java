package leat.model.plan;

import java.util.function.Supplier;
import leat.model.catalog.Catalog;
import leat.model.catalog.Device;
import leat.model.catalog.DeviceKind;
import leat.model.catalog.HeadShape;
import leat.model.catalog.Rules;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.water.Bubbler;
import leat.model.water.Head;
import leat.model.water.PipeRun;
import leat.model.water.Rotor;
import leat.model.water.Spray;

/**
 * All that a calculation may know: the yard, and catalogue and rules with the yard's own additions in them. Every key
 * that the yard names is in the catalogue.
 */
public record Site(Yard yard, Catalog catalog, Rules rules) {

    public Site {
        Require.present("site", "yard", yard);
        Require.present("site", "catalog", catalog);
        Require.present("site", "rules", rules);
        checkKeys(yard, catalog);
    }

    /** The yard on the standing tables, with its additions. */
    public static Site of(Yard yard, Catalog standing, Rules standingRules) {
        return new Site(
                yard,
                standing.withHeads(yard.additions().heads()),
                standingRules.with(yard.additions().limits()));
    }

    /** The same catalogue and rules for a changed yard. */
    public Site with(Yard changed) {
        return new Site(changed, catalog, rules);
    }

    private static void checkKeys(Yard yard, Catalog catalog) {
        yard.terrain()
                .surfaces()
                .forEach(one -> one.soil().ifPresent(key -> named("surface " + one.id(), () -> catalog.soil(key))));
        yard.watering()
                .station()
                .ifPresent(key -> named("watering", () -> catalog.watering().station(key)));
        yard.water().heads().forEach(head -> checkFamily(head, catalog));
        yard.water().pipes().forEach(pipe -> checkPipe(pipe, catalog));
        yard.water()
                .sources()
                .forEach(source -> source.meter()
                        .ifPresent(key -> checkDevice("source " + source.id(), key, catalog, DeviceKind.METER)));
        yard.water().backflows().forEach(one -> {
            String thing = "backflow preventer " + one.id();
            Device device = named(thing, () -> catalog.device(one.device()));
            if (!device.kind().isBackflowPreventer()) {
                throw new InvalidValueException(
                        thing, "device", quoted(one.device(), device), "the key of a backflow preventer");
            }
        });
        yard.water()
                .manifolds()
                .forEach(manifold -> manifold.valves()
                        .forEach(valve ->
                                checkDevice("valve " + valve.id(), valve.device(), catalog, DeviceKind.ZONE_VALVE)));
        PowerKeys power = new PowerKeys(catalog.electrical(), yard.codeFamily());
        yard.power().conduits().forEach(power::check);
        yard.power().cables().forEach(power::check);
    }

    private static void checkPipe(PipeRun pipe, Catalog catalog) {
        String thing = "pipe " + pipe.id();
        named(thing, () -> catalog.series(pipe.series()));
        pipe.tradeSize().ifPresent(size -> named(thing, () -> catalog.pipe(size)));
        for (String key : pipe.fitted()) {
            Device device = named(thing, () -> catalog.device(key));
            if (!device.kind().isFitted()) {
                throw new InvalidValueException(
                        thing,
                        "fitted",
                        quoted(key, device),
                        "the key of a strainer, a check valve, a master valve or a flow sensor");
            }
        }
    }

    private static void checkDevice(String thing, String key, Catalog catalog, DeviceKind wanted) {
        Device device = named(thing, () -> catalog.device(key));
        if (device.kind() != wanted) {
            throw new InvalidValueException(
                    thing, "device", quoted(key, device), "the key of a device that is a " + wanted.label());
        }
    }

    private static String quoted(String key, Device device) {
        return "'" + key + "', which is a " + device.kind().label();
    }

    private static void checkFamily(Head head, Catalog catalog) {
        String thing = "head " + head.id();
        HeadShape wanted = shape(head);
        HeadShape found = named(thing, () -> catalog.head(head.family())).shape();
        if (found != wanted) {
            throw new InvalidValueException(
                    thing,
                    "family",
                    "'" + head.family() + "', which makes a " + found.label(),
                    "a family that makes a " + wanted.label());
        }
    }

    private static HeadShape shape(Head head) {
        if (head instanceof Rotor) {
            return HeadShape.ROTOR;
        }
        if (head instanceof Spray) {
            return HeadShape.SPRAY;
        }
        return head instanceof Bubbler ? HeadShape.BUBBLER : HeadShape.DRIP_LINE;
    }

    /** What the catalogue has, or its refusal with the name of the thing that asked. */
    private static <T> T named(String thing, Supplier<T> row) {
        try {
            return row.get();
        } catch (InvalidValueException e) {
            throw e.within(thing);
        }
    }
}
