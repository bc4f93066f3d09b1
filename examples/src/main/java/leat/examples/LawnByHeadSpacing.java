package leat.examples;

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
import static leat.model.plan.Parts.yard;

import java.io.PrintStream;
import java.util.List;
import leat.calc.Progress;
import leat.calc.assess.Assessment;
import leat.calc.assess.Assessor;
import leat.calc.assess.Planner;
import leat.calc.assess.PlannerParameters;
import leat.calc.coverage.SurfaceCoverage;
import leat.document.StandingData;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;

/**
 * Plans the same lawn with several families of heads and compares what comes of it: the core of a sweep, in a Java
 * program that knows nothing of scripts, drawings or the command line.
 */
public final class LawnByHeadSpacing {

    private LawnByHeadSpacing() {}

    public static void main(String[] args) {
        run(System.out);
    }

    static void run(PrintStream out) {
        StandingData standing = StandingData.load(Yard.EDITION);
        out.println("family     heads  zones  trench    low quarter  findings");
        for (String family : List.of("spray-3_7", "spray-4_6", "multi-4_9", "multi-6_1")) {
            Assessment assessment = planned(standing.siteOf(stated()), family);
            out.println(line(family, assessment));
        }
    }

    private static Yard stated() {
        return yard("Side lawn")
                .with(
                        lawn("lawn", rectangle(at(0, 0), feet(45), feet(30))),
                        mains("street", at(-12, -12)).staticPressure(psi(62)).flowTest(gpm(14), psi(50)),
                        pipe("main", polyline(at(-12, -12), at(-6, -6)))
                                .from("street")
                                .series("PVC Schedule 40")
                                .size("1 in"),
                        backflow("garden").on("main").device("bfp-pvb-1").height(inches(18)),
                        manifold("box", at(-6, -6)).on("main"));
    }

    private static Assessment planned(Site site, String family) {
        PlannerParameters ofFamily = PlannerParameters.defaults().withHeads(List.of(family));
        Yard plan = Planner.run(site, ofFamily, Progress.NONE).yard();
        return Assessor.run(site.with(plan), Progress.NONE);
    }

    private static String line(String family, Assessment assessment) {
        Yard yard = assessment.yard();
        SurfaceCoverage lawn =
                assessment.coverage().surfaces().values().iterator().next();
        return "%-9s  %5d  %5d  %-8s  %-11s  %d"
                .formatted(
                        family,
                        yard.water().heads().size(),
                        yard.water().zones().size(),
                        Units.show(assessment.trenching().trenches(), UnitSystem.US),
                        Units.show(lawn.lowQuarter(), UnitSystem.US),
                        assessment.findings().size());
    }
}
