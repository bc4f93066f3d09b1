package leat.calc.trenching;

import static leat.model.plan.Parts.METRIC;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.backflow;
import static leat.model.plan.Parts.bed;
import static leat.model.plan.Parts.bib;
import static leat.model.plan.Parts.bubbler;
import static leat.model.plan.Parts.circle;
import static leat.model.plan.Parts.existingService;
import static leat.model.plan.Parts.kilopascals;
import static leat.model.plan.Parts.lawn;
import static leat.model.plan.Parts.litresPerMinute;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.metres;
import static leat.model.plan.Parts.millimetres;
import static leat.model.plan.Parts.noDig;
import static leat.model.plan.Parts.obstacle;
import static leat.model.plan.Parts.paving;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.pond;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.rotor;
import static leat.model.plan.Parts.spray;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.traverse;
import static leat.model.plan.Parts.tree;
import static leat.model.plan.Parts.yard;

import java.util.ArrayList;
import java.util.List;
import leat.calc.Progress;
import leat.calc.zoning.Zoning;
import leat.calc.zoning.ZoningParameters;
import leat.document.StandingData;
import leat.model.plan.Part;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.site.ExistingService;

/** A yard of 30 by 40 m with a house in the middle and everything that trenches have to mind. */
final class BackYard {

    private BackYard() {}

    static Site site(Part... more) {
        List<Part> parts = new ArrayList<>();
        addGround(parts);
        addSupply(parts);
        addHeads(parts);
        parts.addAll(List.of(more));
        return siteOf(yard("Back").units(METRIC).with(parts.toArray(Part[]::new)));
    }

    /** The yard with zones, not yet routed. */
    static Site zoned(Part... more) {
        Site site = site(more);
        return site.with(Zoning.run(site, ZoningParameters.defaults().withEffort(20_000), Progress.NONE)
                .yard());
    }

    static Site siteOf(Yard yard) {
        return StandingData.load(Yard.EDITION).siteOf(yard);
    }

    private static void addGround(List<Part> parts) {
        parts.add(traverse(at(0, 0))
                .go("N 0° E", metres(40))
                .go("N 90° E", metres(30))
                .go("S 0° E", metres(40))
                .close());
        parts.add(structure("house", rectangle(at(9, 14), metres(12), metres(9))));
        parts.add(paving("drive", rectangle(at(22, 0), metres(4), metres(14))));
        parts.add(paving("terrace", rectangle(at(9, 23), metres(12), metres(4))));
        parts.add(pond("pond", circle(at(24, 33), metres(2))));
        parts.add(lawn("front", rectangle(at(2, 1), metres(19), metres(12))));
        parts.add(lawn("back", rectangle(at(2, 28), metres(19), metres(11))));
        parts.add(bed("roses", rectangle(at(22, 16), metres(6), metres(8))));
        parts.add(tree("beech", at(5, 20), millimetres(200)));
        parts.add(obstacle("wall", rectangle(at(0.5, 27), metres(6), metres(0.3))));
        parts.add(noDig("old well", circle(at(14, 35), metres(1))).doubt(metres(0.2)));
        parts.add(existingService("gas", ExistingService.Kind.GAS, polyline(at(15, 0), at(15, 14)))
                .doubt(metres(0.3)));
    }

    private static void addSupply(List<Part> parts) {
        parts.add(mains("street", at(28, 1))
                .staticPressure(kilopascals(450))
                .flowTest(litresPerMinute(60), kilopascals(380))
                .meter("meter-3_4"));
        parts.add(pipe("service", polyline(at(28, 1), at(28, 12), at(21, 15)))
                .from("street")
                .series("PE100 SDR 11 (PN 16)")
                .size("DN/OD 32")
                .existing());
        parts.add(pipe("riser", polyline(at(28, 12), at(28.5, 14)))
                .from("service")
                .series("PE100 SDR 11 (PN 16)")
                .size("DN/OD 32"));
        parts.add(backflow("garden").on("riser").device("bfp-pvb-1").height(metres(0.6)));
        parts.add(manifold("box", at(26, 26)).spareValves("spare"));
        parts.add(bib("house", at(21, 15)).on("service").draws(litresPerMinute(20)));
        parts.add(bib("terrace", at(15, 23)).draws(litresPerMinute(20)));
    }

    private static void addHeads(List<Part> parts) {
        for (int column = 0; column < 5; column++) {
            for (int row = 0; row < 4; row++) {
                double x = 2 + column * 4.75;
                double start = column == 0 ? 0 : column == 4 ? 180 : row == 3 ? 90 : 270;
                parts.add(spray("F" + (4 * column + row + 1), at(x, 1 + 4 * row))
                        .family("spray-4_6")
                        .arc(start, 180)
                        .radius(metres(4.5)));
            }
        }
        for (int i = 0; i < 6; i++) {
            double y = i % 2 == 0 ? 28 : 39;
            parts.add(rotor("B" + (i + 1), at(2 + Math.floorDiv(i, 2) * 9.5, y))
                    .family("rotor-2_0")
                    .arc(i % 2 == 0 ? 270 : 90, 180)
                    .radius(metres(10)));
        }
        for (int i = 0; i < 4; i++) {
            parts.add(bubbler("rose " + (i + 1), at(23 + i, 18 + i)).family("bubbler-1_0"));
        }
    }
}
