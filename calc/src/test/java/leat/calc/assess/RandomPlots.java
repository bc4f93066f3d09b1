package leat.calc.assess;

import static leat.model.plan.Parts.HEADS;
import static leat.model.plan.Parts.LATER;
import static leat.model.plan.Parts.METRIC;
import static leat.model.plan.Parts.NONE;
import static leat.model.plan.Parts.NOW;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.backflow;
import static leat.model.plan.Parts.bed;
import static leat.model.plan.Parts.bib;
import static leat.model.plan.Parts.circle;
import static leat.model.plan.Parts.conduit;
import static leat.model.plan.Parts.controller;
import static leat.model.plan.Parts.existingService;
import static leat.model.plan.Parts.feed;
import static leat.model.plan.Parts.kilopascals;
import static leat.model.plan.Parts.lawn;
import static leat.model.plan.Parts.litresPerMinute;
import static leat.model.plan.Parts.luminaires;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.metres;
import static leat.model.plan.Parts.millimetres;
import static leat.model.plan.Parts.noDig;
import static leat.model.plan.Parts.outlet;
import static leat.model.plan.Parts.panel;
import static leat.model.plan.Parts.paving;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.spray;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.traverse;
import static leat.model.plan.Parts.tree;
import static leat.model.plan.Parts.trench;
import static leat.model.plan.Parts.watts;
import static leat.model.plan.Parts.yard;
import static leat.model.plan.Parts.zone;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leat.document.StandingData;
import leat.model.plan.Part;
import leat.model.plan.PipePart;
import leat.model.plan.Place;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.site.ExistingService;

/**
 * Whole yards thrown together at random: with and without pipes that feed the manifold, stated heads, zones, trenches and
 * conduits, with things of later and power. Same seed, same yard.
 */
final class RandomPlots {

    private static final String SERIES = "PE100 SDR 11 (PN 16)";

    private final Random random;
    private final List<Part> parts = new ArrayList<>();

    private RandomPlots(long seed) {
        random = new Random(seed);
    }

    static Site of(long seed) {
        var plots = new RandomPlots(seed);
        plots.addGround();
        plots.addSupply();
        plots.addHeads();
        if (plots.random.nextBoolean()) {
            plots.addPower();
        }
        if (plots.random.nextBoolean()) {
            plots.addTrenches();
        }
        return StandingData.load(Yard.EDITION)
                .siteOf(yard("Plot " + seed).units(METRIC).with(plots.parts.toArray(Part[]::new)));
    }

    private void addGround() {
        if (random.nextInt(4) > 0) {
            parts.add(traverse(at(0, 0))
                    .go("N 2° W", metres(30))
                    .go("N 88° E", metres(26))
                    .go("S 4° W", metres(29))
                    .close());
        }
        parts.add(structure("house", rectangle(at(3, 3), metres(9), metres(6))));
        parts.add(structure("shed", rectangle(place(), metres(3), metres(2))).phase(LATER));
        parts.add(paving("path", rectangle(place(), metres(6), metres(1.2))));
        var grass = lawn("back", rectangle(at(3, 15), metres(8 + random.nextInt(6)), metres(5 + random.nextInt(4))));
        parts.add(random.nextBoolean() ? grass : grass.watering(NONE));
        parts.add(lawn("side", rectangle(at(15, 2), metres(6), metres(7)))
                .watering(random.nextInt(3) > 0 ? NONE : HEADS)
                .phase(random.nextBoolean() ? LATER : NOW));
        parts.add(bed("roses", circle(place(), metres(1.5))).watering(NONE));
        parts.add(tree("beech", place(), millimetres(150)));
        parts.add(noDig("well", circle(place(), metres(1))));
        parts.add(existingService("gas", ExistingService.Kind.GAS, polyline(at(1, 2 + random.nextInt(20)), place()))
                .doubt(metres(0.2)));
    }

    private void addSupply() {
        var street = mains("street", at(2, 1))
                .staticPressure(kilopascals(350 + random.nextInt(150)))
                .flowTest(litresPerMinute(40 + random.nextInt(60)), kilopascals(300));
        parts.add(random.nextBoolean() ? street.meter("meter-3_4") : street);
        boolean guarded = random.nextBoolean();
        if (guarded) {
            PipePart riser =
                    pipe("riser", polyline(at(2, 1), at(2, 4))).from("street").series(SERIES);
            parts.add(random.nextBoolean() ? riser.size(random.nextBoolean() ? "DN/OD 25" : "DN/OD 32") : riser);
            parts.add(backflow("garden").on("riser").device("bfp-pvb-1").height(metres(0.6)));
        }
        if (random.nextInt(3) == 0) {
            parts.add(pipe("old", polyline(at(2, 1), at(13, 1), at(13, 12)))
                    .from(guarded ? "riser" : "street")
                    .series(SERIES)
                    .size("DN/OD 25")
                    .existing());
        }
        for (int i = 0; i <= random.nextInt(2); i++) {
            var box = manifold("box " + i, place());
            box = random.nextInt(3) == 0 ? box.valves("V" + i, "W" + i) : box;
            parts.add(guarded && random.nextInt(4) == 0 ? box.on("riser") : box);
        }
        parts.add(bib("tap", place()));
        parts.add(bib("far tap", place()).phase(LATER));
    }

    private void addHeads() {
        int count = 4 + random.nextInt(10);
        for (int i = 0; i < count; i++) {
            parts.add(spray("S" + i, place())
                    .family(random.nextInt(4) == 0 ? "spray-4_6" : "spray-3_7")
                    .arc(90 * random.nextInt(4), 180)
                    .radius(metres(3.6)));
        }
        if (random.nextBoolean()) {
            parts.add(manifold("stated", place()).valves("A", "B"));
            parts.add(zone("first").valve("A").heads("S0", "S1"));
            if (random.nextBoolean()) {
                parts.add(zone("empty").valve("B").phase(random.nextBoolean() ? LATER : NOW));
            }
        }
    }

    private void addPower() {
        parts.add(panel("main", at(11.9, 5)).spareWays(8).inside("house"));
        parts.add(controller("clock").inside("house").stations(12));
        parts.add(outlet("post", place()));
        parts.add(outlet("late", place()).phase(LATER));
        parts.add(feed("shed").draws(watts(900)).conduitNow());
        parts.add(luminaires("path", place(), place()).draws(watts(20)).switchAt(at(11.9, 7)));
        if (random.nextBoolean()) {
            parts.add(
                    conduit("duct", polyline(at(12, 5), at(20, 12))).existing().size("40"));
        }
    }

    /** One that is empty, one with a pipe in it, and one with a conduit. */
    private void addTrenches() {
        Place from = place();
        Place over = place();
        Place to = place();
        if (!from.equals(over) && !over.equals(to)) {
            parts.add(trench("dug", polyline(from, over, to)).depth(millimetres(600)));
        }
        if (random.nextBoolean()) {
            parts.add(
                    pipe("spur", polyline(at(2, 1), at(14, 1.5))).from("street").series(SERIES));
            parts.add(trench("front", polyline(at(2, 1), at(14, 1.5)))
                    .depth(millimetres(550))
                    .holds("spur"));
        }
        if (random.nextBoolean()) {
            parts.add(conduit("spare", polyline(at(13, 6), at(13, 20))));
            parts.add(trench("back", polyline(at(13, 6), at(13, 20)))
                    .depth(millimetres(700))
                    .holdsConduits("spare"));
        }
    }

    /** On a grid of half metres, so that things do fall on each other. */
    private Place place() {
        return at(2 + 0.5 * random.nextInt(40), 2 + 0.5 * random.nextInt(48));
    }
}
