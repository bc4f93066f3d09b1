package leat.calc.wiring;

import static leat.model.plan.Parts.US;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.electricalCode;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.luminaires;
import static leat.model.plan.Parts.outlet;
import static leat.model.plan.Parts.panel;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.transformer;
import static leat.model.plan.Parts.traverse;
import static leat.model.plan.Parts.volts;
import static leat.model.plan.Parts.watts;
import static leat.model.plan.Parts.yard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leat.calc.Progress;
import leat.document.StandingData;
import leat.model.id.LuminaireId;
import leat.model.plan.LoadPart;
import leat.model.plan.Part;
import leat.model.plan.Place;
import leat.model.plan.Site;
import leat.model.plan.TransformerPart;
import leat.model.plan.Yard;
import leat.model.power.CodeFamily;
import leat.model.quantity.Voltage;

/** A lot of 200 by 60 ft with a house, an outlet on its wall, and a walk along which lamps of 12 V stand. */
final class LampYard {

    private LampYard() {}

    static List<Part> ground() {
        return List.of(
                traverse(at(0, 0))
                        .go("N 0° E", feet(60))
                        .go("N 90° E", feet(200))
                        .go("S 0° E", feet(60))
                        .close(),
                structure("house", rectangle(at(2, 2), feet(16), feet(20))),
                panel("house", at(10, 10)).spareWays(3).inside("house"),
                outlet("porch", at(19, 12)).groundFault().draws(watts(600)));
    }

    static TransformerPart transformer150() {
        return transformer("walk").rating(watts(150)).taps(volts(12), volts(15)).pluggedInto("porch");
    }

    /** So many lamps, 15 ft from each other, the first 15 ft from the transformer. */
    static LoadPart lamps(int count, double eachW) {
        Place[] places = new Place[count];
        for (int i = 0; i < count; i++) {
            places[i] = at(19 + 15 * (i + 1), 12);
        }
        return luminaires("lamp", places).draws(watts(eachW)).from("walk").works(volts(10.8), volts(15));
    }

    static Site site(CodeFamily family, Part... more) {
        List<Part> parts = new ArrayList<>(ground());
        parts.add(electricalCode(family));
        parts.addAll(Arrays.asList(more));
        return StandingData.load(Yard.EDITION).siteOf(yard("Walk").units(US).with(parts.toArray(Part[]::new)));
    }

    static Site wired(Part... more) {
        return wired(CodeFamily.NFPA_70, more);
    }

    static Site wired(CodeFamily family, Part... more) {
        return again(site(family, more));
    }

    static Site again(Site site) {
        return site.with(
                Wiring.run(site, WiringParameters.defaults(), Progress.NONE).yard());
    }

    static WiringResult review(Site site) {
        return WiringReview.run(site, WiringReviewParameters.defaults(), Progress.NONE);
    }

    static Voltage voltage(WiringResult result, String lamp) {
        return result.load(new LuminaireId(lamp)).orElseThrow().voltage().orElseThrow();
    }

    static List<String> broken(WiringResult result) {
        return result.findings().stream()
                .map(one -> one.rule().id() + " " + one.subject())
                .toList();
    }
}
