package leat.calc.takeoff;

import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.bib;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.inches;
import static leat.model.plan.Parts.limit;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.psi;
import static leat.model.plan.Parts.spray;
import static leat.model.plan.Parts.yard;
import static leat.model.plan.Parts.zone;

import java.util.ArrayList;
import java.util.List;
import leat.calc.Progress;
import leat.document.StandingData;
import leat.model.plan.HeadPart;
import leat.model.plan.Part;
import leat.model.plan.Path;
import leat.model.plan.PipePart;
import leat.model.plan.Yard;

/**
 * A flat yard of two zones, small enough to be counted by hand; feet. Main and manifold are of 1 in pipe, laterals of
 * 3/4 in, the branch to H6 of 1/2 in.
 * <pre>
 *   35           H3                 40 H5
 *                |                     |
 *   20   H1 ---- + ---- H2             H4  25
 *   15           |                     + -- H6
 *   10           V ------------------- +
 *                | manifold
 *    0   S --b-- +
 *        0  10   20     40             50   60
 * </pre>
 */
final class TwoZones {

    private TwoZones() {}

    static Yard drawn(Part... more) {
        List<Part> parts = new ArrayList<>(List.of(
                limit("trench.cover.main", inches(18)),
                limit("trench.cover.lateral", inches(10)),
                mains("street", at(0, 0)).staticPressure(psi(60)),
                plastic("main", polyline(at(0, 0), at(20, 0), at(20, 10)), "1 in")
                        .from("street"),
                bib("tap", at(10, 0)).on("main"),
                manifold("box", at(20, 10)).on("main").valves("V1", "V2"),
                head("H1", 0, 20),
                head("H2", 40, 20),
                head("H3", 20, 35),
                head("H4", 50, 25),
                head("H5", 50, 40),
                head("H6", 60, 15),
                zone("left").valve("V1").heads("H1", "H2", "H3"),
                zone("right").valve("V2").heads("H4", "H5", "H6"),
                plastic("a1", polyline(at(20, 10), at(20, 20)), "3/4 in").from("V1"),
                plastic("a2", polyline(at(20, 20), at(0, 20)), "3/4 in")
                        .from("a1")
                        .to("H1"),
                plastic("a3", polyline(at(20, 20), at(40, 20)), "3/4 in")
                        .from("a1")
                        .to("H2"),
                plastic("a4", polyline(at(20, 20), at(20, 35)), "3/4 in")
                        .from("a1")
                        .to("H3"),
                plastic("b1", polyline(at(20, 10), at(50, 10), at(50, 25)), "3/4 in")
                        .from("V2")
                        .to("H4"),
                plastic("b2", polyline(at(50, 25), at(50, 40)), "3/4 in")
                        .from("b1")
                        .to("H5"),
                plastic("b3", polyline(at(50, 15), at(60, 15)), "1/2 in")
                        .from("b1")
                        .to("H6")));
        parts.addAll(List.of(more));
        return yard("Two zones").with(parts.toArray(Part[]::new));
    }

    static PipePart plastic(String name, Path route, String size) {
        return pipe(name, route).series("PVC Schedule 40").size(size);
    }

    private static HeadPart head(String name, double eastFt, double northFt) {
        return spray(name, at(eastFt, northFt)).family("spray-3_7").arc(0, 180).radius(feet(12));
    }

    static TakeoffResult takeoff(Yard yard) {
        return Takeoff.run(StandingData.load(Yard.EDITION).siteOf(yard), TakeoffParameters.defaults(), Progress.NONE);
    }
}
