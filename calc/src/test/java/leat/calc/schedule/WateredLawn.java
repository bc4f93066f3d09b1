package leat.calc.schedule;

import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.gpm;
import static leat.model.plan.Parts.lawn;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.psi;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.spray;
import static leat.model.plan.Parts.yard;
import static leat.model.plan.Parts.zone;

import java.util.ArrayList;
import java.util.List;
import leat.document.StandingData;
import leat.model.plan.Part;
import leat.model.plan.Site;
import leat.model.plan.SurfacePart;
import leat.model.plan.Yard;

/** A lawn of 30 by 45 feet with twelve sprays of 15 feet in two zones, west and east. */
public final class WateredLawn {

    private WateredLawn() {}

    /** A lawn that says all that the schedule asks for. */
    public static SurfacePart grass() {
        return lawn("lawn", rectangle(at(0, 0), feet(30), feet(45)))
                .soil("silt loam")
                .planting("turf-cool");
    }

    public static Site site(SurfacePart lawn, Part... more) {
        List<Part> parts = new ArrayList<>(List.of(
                lawn,
                mains("street", at(-20, 0))
                        .staticPressure(psi(60))
                        .flowTest(gpm(15), psi(50))
                        .meter("meter-5_8"),
                pipe("main", polyline(at(-20, 0), at(-5, 0)))
                        .from("street")
                        .series("PVC Schedule 40")
                        .size("1 in"),
                manifold("box", at(-5, 0)).on("main").valves("V1", "V2").device("valve-1"),
                zone("west").valve("V1").heads("S1", "S2", "S3", "S4", "S5", "S6"),
                zone("east").valve("V2").heads("S7", "S8", "S9", "S10", "S11", "S12")));
        addSprays(parts);
        parts.addAll(List.of(more));
        return siteOf(yard("Home").with(parts.toArray(Part[]::new)));
    }

    static Site siteOf(Yard yard) {
        return StandingData.load(Yard.EDITION).siteOf(yard);
    }

    private static void addSprays(List<Part> parts) {
        for (int column = 0; column < 3; column++) {
            for (int row = 0; row < 4; row++) {
                boolean west = column == 0;
                boolean east = column == 2;
                boolean south = row == 0;
                boolean north = row == 3;
                double start =
                        north ? (west ? 90 : east ? 180 : 90) : south ? (east ? 270 : west ? 0 : 270) : west ? 0 : 180;
                double sweep = (west || east) && (south || north) ? 90 : west || east || south || north ? 180 : 360;
                parts.add(spray("S" + (4 * column + row + 1), at(15 * column, 15 * row))
                        .family("spray-4_6")
                        .arc(sweep == 360 ? 0 : start, sweep)
                        .radius(feet(15)));
            }
        }
    }
}
