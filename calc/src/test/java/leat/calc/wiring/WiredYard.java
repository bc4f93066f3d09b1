package leat.calc.wiring;

import static leat.model.plan.Parts.US;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.conduit;
import static leat.model.plan.Parts.controller;
import static leat.model.plan.Parts.feed;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.luminaires;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.outlet;
import static leat.model.plan.Parts.panel;
import static leat.model.plan.Parts.paving;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.traverse;
import static leat.model.plan.Parts.watts;
import static leat.model.plan.Parts.yard;
import static leat.model.site.Phase.LATER;

import java.util.ArrayList;
import java.util.List;
import leat.calc.Progress;
import leat.document.StandingData;
import leat.model.plan.Part;
import leat.model.plan.Site;
import leat.model.plan.Yard;

/** A yard of 100 by 120 ft: house with a panel, workshop with the controller and an old duct to it, a summer house later. */
final class WiredYard {

    private WiredYard() {}

    static List<Part> ground() {
        return new ArrayList<>(List.of(
                traverse(at(0, 0))
                        .go("N 0° E", feet(120))
                        .go("N 90° E", feet(100))
                        .go("S 0° E", feet(120))
                        .close(),
                structure("house", rectangle(at(10, 10), feet(40), feet(30))),
                structure("workshop", rectangle(at(70, 20), feet(18), feet(14))),
                structure("summer house", rectangle(at(80, 100), feet(10), feet(10)))
                        .phase(LATER),
                paving("terrace", rectangle(at(15, 40), feet(30), feet(12)))));
    }

    static List<Part> power() {
        return List.of(
                panel("house", at(48, 30)).spareWays(3).inside("house"),
                conduit("old duct", polyline(at(50, 28), at(60, 27), at(70, 27)))
                        .existing()
                        .size("3/4"),
                outlet("court", at(60, 60)),
                outlet("lawn", at(30, 80)),
                feed("summer house").at(at(84, 102)).draws(watts(900)).conduitNow(),
                luminaires("terrace", at(20, 55), at(30, 55), at(40, 55))
                        .switchAt(at(50, 38))
                        .wiresNow(),
                controller("clock").inside("workshop").stations(8),
                manifold("box", at(60, 70)).valves("V1", "V2", "V3"));
    }

    static Site site(Part... more) {
        List<Part> parts = ground();
        parts.addAll(power());
        parts.addAll(List.of(more));
        return siteOf(yard("Plot").units(US).with(parts.toArray(Part[]::new)));
    }

    static Site wired(Part... more) {
        Site site = site(more);
        return site.with(
                Wiring.run(site, WiringParameters.defaults(), Progress.NONE).yard());
    }

    static Site siteOf(Yard yard) {
        return StandingData.load(Yard.EDITION).siteOf(yard);
    }
}
