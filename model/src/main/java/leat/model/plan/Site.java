package leat.model.plan;

import leat.model.catalog.Catalog;
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
        yard.terrain().surfaces().forEach(surface -> surface.soil().ifPresent(catalog::soil));
        yard.water().heads().forEach(head -> checkFamily(head, catalog));
        yard.water().pipes().forEach(pipe -> checkPipe(pipe, catalog));
        yard.water()
                .sources()
                .forEach(source -> source.meter()
                        .ifPresent(key -> checkDevice("source " + source.id(), key, catalog, DeviceKind.METER)));
        yard.water().backflows().forEach(one -> {
            if (!catalog.device(one.device()).kind().isBackflowPreventer()) {
                throw new InvalidValueException(
                        "backflow preventer " + one.id(),
                        "device",
                        "'" + one.device() + "'",
                        "the key of a backflow preventer");
            }
        });
        yard.water()
                .manifolds()
                .forEach(manifold -> manifold.valves()
                        .forEach(valve ->
                                checkDevice("valve " + valve.id(), valve.device(), catalog, DeviceKind.ZONE_VALVE)));
    }

    private static void checkPipe(PipeRun pipe, Catalog catalog) {
        catalog.series(pipe.series());
        pipe.tradeSize().ifPresent(catalog::pipe);
    }

    private static void checkDevice(String thing, String key, Catalog catalog, DeviceKind kind) {
        DeviceKind found = catalog.device(key).kind();
        if (found != kind) {
            throw new InvalidValueException(thing, "device", "'" + key + "', a " + found, "the key of a " + kind);
        }
    }

    private static void checkFamily(Head head, Catalog catalog) {
        HeadShape wanted = head instanceof Rotor
                ? HeadShape.ROTOR
                : head instanceof Spray
                        ? HeadShape.SPRAY
                        : head instanceof Bubbler ? HeadShape.BUBBLER : HeadShape.DRIP_LINE;
        HeadShape found = catalog.head(head.family()).shape();
        if (found != wanted) {
            throw new InvalidValueException(
                    "head " + head.id(),
                    "family",
                    "'" + head.family() + "', a " + found,
                    "a family of shape " + wanted);
        }
    }
}
