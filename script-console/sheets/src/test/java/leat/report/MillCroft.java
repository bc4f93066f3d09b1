package leat.report;

import static leat.model.plan.Parts.METRIC;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.bib;
import static leat.model.plan.Parts.kilopascals;
import static leat.model.plan.Parts.lawn;
import static leat.model.plan.Parts.litresPerMinute;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.metres;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.pump;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.spray;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.yard;
import static leat.model.plan.Parts.zone;

import leat.model.plan.Yard;

/** A corner of Mill Croft, metric: a pump on a rain-water tank and one lawn; no survey. */
final class MillCroft {

    private static final String PE = "PE100 SDR 11 (PN 16)";

    private MillCroft() {}

    static Yard yardByHand() {
        return yard("Mill Croft")
                .units(METRIC)
                .with(
                        structure("shed", rectangle(at(0, 8), metres(3), metres(2.4))),
                        lawn("top lawn", rectangle(at(4, 0), metres(7), metres(7))),
                        pump("rain pump", at(3.4, 9))
                                .shutOff(kilopascals(420))
                                .duty(litresPerMinute(40), kilopascals(300)),
                        pipe("main", polyline(at(3.4, 9), at(3.4, 7.6)))
                                .from("rain pump")
                                .series(PE)
                                .size("DN/OD 32"),
                        manifold("by the shed", at(3.4, 7.6))
                                .on("main")
                                .valves("V1")
                                .device("valve-1"),
                        bib("shed tap", at(3.4, 8.4)).on("main").draws(litresPerMinute(15)),
                        spray("S1", at(4, 0)).family("spray-4_6").arc(0, 90).radius(metres(4.6)),
                        spray("S2", at(11, 0)).family("spray-4_6").arc(270, 90).radius(metres(4.6)),
                        spray("S3", at(11, 7)).family("spray-4_6").arc(180, 90).radius(metres(4.6)),
                        spray("S4", at(4, 7)).family("spray-4_6").arc(90, 90).radius(metres(4.6)),
                        zone("top").valve("V1").heads("S1", "S2", "S3", "S4"),
                        pipe("t1", polyline(at(3.4, 7.6), at(4, 7)))
                                .from("V1")
                                .series(PE)
                                .size("DN/OD 32")
                                .to("S4"),
                        pipe("t2", polyline(at(4, 7), at(11, 7)))
                                .from("t1")
                                .series(PE)
                                .size("DN/OD 25")
                                .to("S3"),
                        pipe("t3", polyline(at(4, 7), at(4, 0)))
                                .from("t1")
                                .series(PE)
                                .size("DN/OD 25")
                                .to("S1"),
                        pipe("t4", polyline(at(4, 0), at(11, 0)))
                                .from("t3")
                                .series(PE)
                                .size("DN/OD 20")
                                .to("S2"));
    }
}
