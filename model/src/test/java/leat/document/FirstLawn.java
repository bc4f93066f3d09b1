package leat.document;

import static leat.model.plan.Parts.METRIC;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.backflow;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.gpm;
import static leat.model.plan.Parts.inches;
import static leat.model.plan.Parts.lawn;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.psi;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.spray;
import static leat.model.plan.Parts.traverse;
import static leat.model.plan.Parts.trench;
import static leat.model.plan.Parts.yard;
import static leat.model.plan.Parts.zone;

import leat.model.id.HeadId;
import leat.model.plan.Aspect;
import leat.model.plan.Yard;

/** A small yard for tests that want to see the text of one: two sprays on one valve. */
final class FirstLawn {

    private FirstLawn() {}

    static Yard yardInFeet() {
        return yard("First lawn")
                .with(
                        traverse(at(-10, -10))
                                .go("N 0° E", feet(36))
                                .go("N 90° E", feet(36))
                                .go("S 0° E", feet(36))
                                .close(),
                        lawn("lawn", rectangle(at(0, 0), feet(15), feet(15))).soil("loam"),
                        mains("street", at(-8, -8))
                                .staticPressure(psi(60))
                                .flowTest(gpm(15), psi(50))
                                .meter("meter-5_8"),
                        pipe("main", polyline(at(-8, -8), at(-3, -3)))
                                .from("street")
                                .series("PVC Schedule 40")
                                .size("3/4 in"),
                        backflow("garden").on("main").device("bfp-pvb-3_4").height(inches(18)),
                        manifold("box", at(-3, -3)).on("main").valves("V1").device("valve-3_4"),
                        spray("S1", at(0, 0)).family("spray-4_6").arc(0, 90).radius(feet(15)),
                        spray("S2", at(15, 0)).family("spray-4_6").arc(270, 90).radius(feet(15)),
                        zone("Z1").valve("V1").heads("S1", "S2"),
                        pipe("Z1/1", polyline(at(-3, -3), at(0, 0)))
                                .from("V1")
                                .to("S1")
                                .series("PVC Schedule 40")
                                .size("3/4 in"),
                        pipe("Z1/2", polyline(at(0, 0), at(15, 0)))
                                .from("Z1/1")
                                .to("S2")
                                .series("PVC Schedule 40")
                                .size("1/2 in"),
                        trench("T1", polyline(at(-8, -8), at(-3, -3)))
                                .depth(inches(20))
                                .holds("main"))
                .release(new HeadId("S2"), Aspect.POSITION, Aspect.ZONE);
    }

    static Yard yardInMetres() {
        return yardInFeet().units(METRIC);
    }
}
