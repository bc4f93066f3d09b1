package leat.model.plan;

import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.catalog.Costs;
import leat.model.catalog.MaterialKind;
import leat.model.catalog.PriceBook;
import leat.model.quantity.Ratio;

/** What the budget has to go by. What it does not say stays as the yard has it. */
public final class BudgetPart extends Part {

    private final Fields fields;
    private final SortedMap<MaterialKind, Ratio> wasteByKind;

    BudgetPart(Fields fields, SortedMap<MaterialKind, Ratio> wasteByKind) {
        this.fields = fields;
        this.wasteByKind = wasteByKind;
    }

    /** Prices, beside those that the yard has; one of a material that has one already takes its place. */
    public BudgetPart prices(PriceBook prices) {
        return set("prices", prices);
    }

    /** The share bought beyond the need, of all that is cut or poured: pipe, wire, conduit, bedding. */
    public BudgetPart waste(Ratio share) {
        return set("waste", share);
    }

    /** The same for one kind of goods, such as {@code FITTING}. */
    public BudgetPart waste(MaterialKind kind, Ratio share) {
        SortedMap<MaterialKind, Ratio> more = new TreeMap<>(wasteByKind);
        more.put(kind, share);
        return new BudgetPart(fields, more);
    }

    /** On all goods. */
    public BudgetPart tax(Ratio share) {
        return set("tax", share);
    }

    /** For what nobody thought of; on goods, labour and tax. */
    public BudgetPart contingency(Ratio share) {
        return set("contingency", share);
    }

    private BudgetPart set(String field, Object value) {
        return new BudgetPart(fields.with(field, value), wasteByKind);
    }

    @Override
    void addTo(YardDraft draft) {
        Costs before = draft.costs();
        SortedMap<MaterialKind, Ratio> kinds = new TreeMap<>(before.wasteByKind());
        kinds.putAll(wasteByKind);
        draft.costs(new Costs(
                before.prices().with(fields.get("prices", PriceBook.EMPTY, PriceBook.class)),
                fields.get("waste", before.waste(), Ratio.class),
                kinds,
                fields.get("tax", before.tax(), Ratio.class),
                fields.get("contingency", before.contingency(), Ratio.class)));
    }
}
