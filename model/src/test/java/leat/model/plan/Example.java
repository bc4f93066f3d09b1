package leat.model.plan;

import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.backflow;
import static leat.model.plan.Parts.bed;
import static leat.model.plan.Parts.bib;
import static leat.model.plan.Parts.bubbler;
import static leat.model.plan.Parts.circle;
import static leat.model.plan.Parts.dripLine;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.finishedLevel;
import static leat.model.plan.Parts.gpm;
import static leat.model.plan.Parts.inches;
import static leat.model.plan.Parts.lawn;
import static leat.model.plan.Parts.level;
import static leat.model.plan.Parts.limit;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.noDig;
import static leat.model.plan.Parts.paving;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.psi;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.rotor;
import static leat.model.plan.Parts.setback;
import static leat.model.plan.Parts.spray;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.traverse;
import static leat.model.plan.Parts.tree;
import static leat.model.plan.Parts.trench;
import static leat.model.plan.Parts.yard;
import static leat.model.plan.Parts.zone;

/** A small yard stated as a user would: one zone of heads, a bed on drip, a bib, a trench. */
final class Example {

    private Example() {}

    static Yard plot() {
        return yard("Plot")
                .with(
                        traverse(at(0, 0))
                                .go("N 0° E", feet(60))
                                .go("N 90° E", feet(40))
                                .go("S 0° E", feet(60))
                                .close(),
                        level(at(0, 0), feet(0)),
                        level(at(40, 60), feet(2)),
                        finishedLevel(at(20, 30), feet(1.5)),
                        lawn("front", rectangle(at(5, 5), feet(20), feet(20))).soil("silt loam"),
                        bed("roses", circle(at(32, 50), feet(4))).watering(Parts.DRIP),
                        paving("path", rectangle(at(26, 0), feet(3), feet(60))),
                        structure("shed", rectangle(at(30, 20), feet(8), feet(8)))
                                .phase(Parts.LATER),
                        tree("oak", at(35, 40), inches(14)),
                        noDig("roots", circle(at(35, 40), feet(6))),
                        setback("fence", polyline(at(0, 58), at(40, 58))),
                        mains("street", at(0, 0))
                                .staticPressure(psi(62))
                                .flowTest(gpm(14), psi(48))
                                .meter("meter-5_8"),
                        pipe("service", polyline(at(0, 0), at(3, 0)))
                                .from("street")
                                .series("copper L")
                                .size("1 in")
                                .existing(),
                        pipe("main", polyline(at(3, 0), at(3, 4)))
                                .from("service")
                                .series("PVC Schedule 40"),
                        backflow("cage").on("main").device("bfp-pvb-1").height(inches(12)),
                        manifold("box", at(3, 4)).on("main").valves("V1", "V2").spareValves("V3"),
                        zone("front").valve("V1").heads("S1", "S2"),
                        zone("beds").valve("V2").heads("D1", "B1"),
                        spray("S1", at(5, 5)).family("spray-3_7").arc(0, 90).radius(feet(12)),
                        rotor("S2", at(25, 5)).family("rotor-9").arc(270, 90).radius(feet(25)),
                        dripLine("D1", polyline(at(29, 49), at(35, 49))).family("drip-0_3"),
                        bubbler("B1", at(35, 40)).family("bubbler-1"),
                        pipe("F1", polyline(at(3, 4), at(5, 5)))
                                .from("V1")
                                .series("PVC Schedule 40")
                                .to("S1"),
                        pipe("F2", polyline(at(5, 5), at(25, 5)))
                                .from("F1")
                                .series("PVC Schedule 40")
                                .to("S2"),
                        bib("court", at(3, 2)).on("main"),
                        trench("T1", polyline(at(3, 4), at(5, 5)))
                                .depth(inches(12))
                                .holds("F1"),
                        limit("trench.cover", inches(18)));
    }
}
