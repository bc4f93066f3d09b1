package leat.calc.takeoff;

import java.util.List;
import java.util.Optional;
import leat.model.catalog.MaterialKind;
import leat.model.fault.Require;
import leat.model.quantity.Quantity;
import leat.model.site.Phase;

/**
 * One material of the takeoff in one phase.
 *
 * @param key      by which prices are found, such as {@code tee 1 in PVC}
 * @param text     what a supplier is asked for
 * @param quantity sum of the uses, in their order
 * @param stock    how it is bought where it comes in equal lengths; empty for what is counted, poured or cut to length
 * @param uses     at least one
 */
public record MaterialLine(
        String key,
        MaterialKind kind,
        String text,
        Quantity quantity,
        Phase phase,
        Optional<StockPieces> stock,
        List<MaterialUse> uses) {

    public MaterialLine {
        Require.name("material", "key", key);
        Require.present("material " + key, "kind", kind);
        Require.present("material " + key, "text", text);
        Require.present("material " + key, "quantity", quantity);
        Require.present("material " + key, "phase", phase);
        Require.present("material " + key, "stock", stock);
        uses = Require.entries("material " + key, "uses", uses);
    }

    /** Whether a person may mean it by that: the key, or the whole words at its beginning. */
    public boolean isCalled(String words) {
        return key.equals(words) || key.startsWith(words + " ");
    }
}
