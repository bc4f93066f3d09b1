package leat.document;

import java.util.List;
import leat.model.catalog.Catalog;
import leat.model.catalog.Rules;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.UnitSystem;

/**
 * The tables that come with Leat: heads, pipes, devices, fittings, soils, rules. They have an edition, and a published
 * edition is never changed, so that an old yard keeps its old figures. Each row says where its figures come from.
 *
 * @param edition     such as {@code leat-1}
 * @param rules       with the limits of US yards
 * @param metricRules with those of metric yards: 450 mm where the others have 18 in
 */
public record StandingData(String edition, Catalog catalog, Rules rules, Rules metricRules) {

    /** Newest last. */
    public static final List<String> EDITIONS = List.of("leat-1");

    /**
     * Reads the tables of an edition; takes a few milliseconds and keeps nothing.
     *
     * @throws InvalidValueException if there is no such edition
     */
    public static StandingData load(String edition) {
        return new StandingData(
                known(edition),
                CatalogTables.read(edition),
                RuleTable.read(edition, UnitSystem.US),
                RuleTable.read(edition, UnitSystem.METRIC));
    }

    static String known(String edition) {
        if (!EDITIONS.contains(edition)) {
            String nearest = Nearest.to(edition, EDITIONS)
                    .map(near -> "; perhaps '" + near + "'")
                    .orElse("");
            throw new InvalidValueException(
                    "standing tables",
                    "edition",
                    "'" + edition + "'",
                    "one that this version has: " + String.join(", ", EDITIONS) + nearest);
        }
        return edition;
    }

    /**
     * The yard with these tables and its own additions.
     *
     * @throws InvalidValueException if the yard was planned with another edition or names a key that is not there
     */
    public Site siteOf(Yard yard) {
        if (!yard.edition().equals(edition)) {
            throw new InvalidValueException(
                    "yard " + yard.name(), "edition", "'" + yard.edition() + "'", "that of the tables, " + edition);
        }
        return Site.of(yard, catalog, yard.units() == UnitSystem.US ? rules : metricRules);
    }
}
