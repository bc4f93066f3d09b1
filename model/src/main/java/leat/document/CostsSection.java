package leat.document;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.catalog.Costs;
import leat.model.catalog.MaterialKind;
import leat.model.catalog.Price;
import leat.model.catalog.PriceBook;
import leat.model.quantity.Dimension;
import leat.model.quantity.Ratio;
import leat.model.quantity.UnitSystem;

/** The section {@code costs}: prices with their sources, waste, tax and contingency. */
final class CostsSection {

    private final Places places;

    CostsSection(Places places) {
        this.places = places;
    }

    static Map<String, Object> written(Costs costs, UnitSystem units) {
        FieldWriter out = new FieldWriter(units);
        share(out, "waste", costs.waste());
        out.list(
                "wasteByKind",
                Lists.map(
                        List.copyOf(costs.wasteByKind().entrySet()),
                        entry -> new FieldWriter(units)
                                .word("kind", entry.getKey())
                                .quantity("waste", entry.getValue())
                                .fields()));
        share(out, "tax", costs.tax());
        share(out, "contingency", costs.contingency());
        return out.list("prices", Lists.map(costs.prices().prices(), one -> price(one, units)))
                .fields();
    }

    private static void share(FieldWriter out, String name, Ratio share) {
        if (!share.equals(Ratio.ZERO)) {
            out.quantity(name, share);
        }
    }

    private static Map<String, Object> price(Price price, UnitSystem units) {
        return new FieldWriter(units)
                .text("key", price.key())
                .text("unit", price.unit().symbol())
                .text("price", price.digits())
                .text("currency", price.currency())
                .text("source", price.source())
                .text("date", price.date().toString())
                .fields();
    }

    Costs read(Json json) {
        FieldReader in =
                FieldReader.of(json, "costs section", places, "waste", "wasteByKind", "tax", "contingency", "prices");
        return in.made(() -> new Costs(
                new PriceBook(in.list("prices", this::price)),
                share(in, "waste"),
                wasteByKind(in),
                share(in, "tax"),
                share(in, "contingency")));
    }

    private static Ratio share(FieldReader in, String name) {
        return in.has(name) ? in.quantity(name, Dimension.RATIO, Ratio.class) : Ratio.ZERO;
    }

    private SortedMap<MaterialKind, Ratio> wasteByKind(FieldReader in) {
        SortedMap<MaterialKind, Ratio> byKind = new TreeMap<>();
        in.list("wasteByKind", json -> {
            FieldReader one = FieldReader.of(json, "waste of a kind", places, "kind", "waste");
            MaterialKind kind = one.word("kind", MaterialKind.class);
            Ratio waste = one.quantity("waste", Dimension.RATIO, Ratio.class);
            if (byKind.put(kind, waste) != null) {
                throw one.spot("kind").fault("the waste of " + Words.of(kind) + " is given twice; it must be once");
            }
            return kind;
        });
        return byKind;
    }

    private Price price(Json json) {
        FieldReader in = FieldReader.of(json, "price", places, "key", "unit", "price", "currency", "source", "date");
        String key = in.text("key");
        in.knownAs("price of " + key);
        return in.made(() -> Price.of(
                key, in.text("unit"), in.text("price"), in.text("currency"), in.text("source"), in.text("date")));
    }
}
