package leat.model.catalog;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.quantity.Ratio;

/**
 * What the budget has to go by.
 *
 * @param waste       bought beyond what the plan needs, for all goods that are cut or poured; at least 0, at most 1
 * @param wasteByKind the same for one kind of goods, counted ones too
 * @param tax         on all goods; at least 0, at most 1
 * @param contingency on goods, labour and tax together; at least 0, at most 1
 */
public record Costs(
        PriceBook prices, Ratio waste, SortedMap<MaterialKind, Ratio> wasteByKind, Ratio tax, Ratio contingency) {

    public static final Costs NONE =
            new Costs(PriceBook.EMPTY, Ratio.ZERO, Collections.emptySortedMap(), Ratio.ZERO, Ratio.ZERO);

    public Costs {
        Require.present("budget", "prices", prices);
        share("waste", waste);
        Require.present("budget", "wasteByKind", wasteByKind);
        wasteByKind = Collections.unmodifiableSortedMap(new TreeMap<>(wasteByKind));
        wasteByKind.forEach((kind, share) -> share("waste of " + kind.label(), share));
        share("tax", tax);
        share("contingency", contingency);
    }

    /** The share that is bought beyond the need. */
    public Ratio wasteOf(MaterialKind kind) {
        Ratio usual = kind.isCut() ? waste : Ratio.ZERO;
        return wasteByKind.getOrDefault(kind, usual);
    }

    private static void share(String field, Ratio value) {
        Require.atLeast("budget", field, value, Ratio.ZERO);
        if (value.value() > 1) {
            throw new InvalidValueException("budget", field, value.toString(), "at most 100 %");
        }
    }
}
