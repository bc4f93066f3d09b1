package leat.calc.hydraulics;

import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.backflow;
import static leat.model.plan.Parts.bib;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.gpm;
import static leat.model.plan.Parts.inches;
import static leat.model.plan.Parts.level;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.psi;
import static leat.model.plan.Parts.rotor;
import static leat.model.plan.Parts.yard;
import static leat.model.plan.Parts.zone;

import java.util.ArrayList;
import java.util.List;
import leat.document.StandingData;
import leat.model.plan.Part;
import leat.model.plan.PipePart;
import leat.model.plan.Site;
import leat.model.plan.SourcePart;
import leat.model.plan.Yard;

/**
 * A yard of our own: a main of 60 ft, a pressure vacuum breaker at half its length, a manifold of two valves, two rotors
 * up a lateral and one along another, a bib. All lengths in feet.
 */
public final class SlopeYard {

    public static final String PVC = "PVC Schedule 40";

    private SlopeYard() {}

    public static SourcePart street(double staticPsi) {
        return mains("street", at(0, 0)).staticPressure(psi(staticPsi)).meter("meter-3_4");
    }

    /** @param sized whether pipes have sizes: 1 in, and 3/4 in behind the valves */
    public static Yard yard0(SourcePart street, boolean sized, double riseFt, Part... more) {
        List<Part> parts = new ArrayList<>(List.of(
                street,
                level(at(0, 0), feet(0)),
                level(at(60, 0), feet(0)),
                level(at(60, 30), feet(riseFt)),
                level(at(60, 60), feet(riseFt)),
                size(
                        pipe("service", polyline(at(0, 0), at(30, 0)))
                                .from("street")
                                .series(PVC),
                        "1 in",
                        sized),
                size(
                        pipe("main", polyline(at(30, 0), at(60, 0)))
                                .from("service")
                                .series(PVC),
                        "1 in",
                        sized),
                backflow("breaker").on("main").device("bfp-pvb-1").height(inches(30)),
                manifold("box", at(60, 0)).on("main").valves("V1", "V2").device("valve-1"),
                rotor("R1", at(60, 30)).family("rotor-3_0").arc(0, 180).radius(feet(38)),
                rotor("R2", at(60, 60)).family("rotor-3_0").arc(0, 180).radius(feet(38)),
                rotor("R3", at(100, 0)).family("rotor-2_0").arc(0, 180).radius(feet(34)),
                zone("up").valve("V1").heads("R1", "R2"),
                zone("along").valve("V2").heads("R3"),
                size(
                        pipe("u1", polyline(at(60, 0), at(60, 30)))
                                .from("V1")
                                .series(PVC)
                                .to("R1"),
                        "3/4 in",
                        sized),
                size(
                        pipe("u2", polyline(at(60, 30), at(60, 60)))
                                .from("u1")
                                .series(PVC)
                                .to("R2"),
                        "3/4 in",
                        sized),
                size(
                        pipe("a1", polyline(at(60, 0), at(100, 0)))
                                .from("V2")
                                .series(PVC)
                                .to("R3"),
                        "3/4 in",
                        sized),
                bib("tap", at(20, 0)).on("service").draws(gpm(5))));
        parts.addAll(List.of(more));
        return yard("Slope").with(parts.toArray(Part[]::new));
    }

    public static Site site(Yard yard) {
        return StandingData.load(Yard.EDITION).siteOf(yard);
    }

    private static PipePart size(PipePart pipe, String size, boolean sized) {
        return sized ? pipe.size(size) : pipe;
    }
}
