package leat.model.catalog;

import java.util.List;
import java.util.Optional;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;

/**
 * How much water a kind of planting uses, as crop coefficients: its use over that of the grass reference.
 *
 * @param initial   before it has leaves; empty when it uses the same all year
 * @param middle    fully grown
 * @param end       when it ends its season; empty when it uses the same all year
 * @param monthly   from January on, north of the equator; either none or twelve, which then stand for the others
 * @param root      depth that its roots draw from when watered often
 * @param depletion share of the available water that it may draw before it suffers, at 5 mm of use a day; 0.1 to 0.8
 */
public record PlantKind(
        String key,
        String title,
        Optional<Ratio> initial,
        Ratio middle,
        Optional<Ratio> end,
        List<Ratio> monthly,
        Length root,
        Ratio depletion,
        Citation citation) {

    public PlantKind {
        Require.name("planting", "key", key);
        String thing = "planting " + key;
        Require.present(thing, "title", title);
        Require.present(thing, "initial", initial);
        Require.moreThan(thing, "middle", middle, Ratio.ZERO);
        Require.present(thing, "end", end);
        monthly = Require.entries(thing, "monthly", monthly);
        if (!monthly.isEmpty() && monthly.size() != 12) {
            throw new InvalidValueException(thing, "monthly", monthly.size() + " figures", "none or twelve");
        }
        Require.moreThan(thing, "root", root, Length.ZERO);
        Require.atLeast(thing, "depletion", depletion, Ratio.of(0.1));
        if (depletion.value() > 0.8) {
            throw new InvalidValueException(thing, "depletion", depletion.toString(), "10 % to 80 %");
        }
        Require.present(thing, "citation", citation);
    }
}
