package leat.examples;

import static leat.model.plan.Parts.amps;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.backflow;
import static leat.model.plan.Parts.bib;
import static leat.model.plan.Parts.circuit;
import static leat.model.plan.Parts.controller;
import static leat.model.plan.Parts.feed;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.gpm;
import static leat.model.plan.Parts.inches;
import static leat.model.plan.Parts.lawn;
import static leat.model.plan.Parts.luminaires;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.outlet;
import static leat.model.plan.Parts.panel;
import static leat.model.plan.Parts.paving;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.psi;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.watering;
import static leat.model.plan.Parts.watts;
import static leat.model.plan.Parts.yard;

import java.io.PrintStream;
import java.util.List;
import leat.calc.Progress;
import leat.calc.assess.Assessment;
import leat.calc.assess.Assessor;
import leat.calc.assess.Planner;
import leat.calc.assess.PlannerParameters;
import leat.document.StandingData;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.quantity.Quantity;
import leat.model.quantity.UnitSystem;
import leat.model.quantity.Units;

/**
 * Plans and assesses a whole yard, water and power, and says what comes of it: what another front end does, in a Java
 * program that knows nothing of scripts, drawings or the command line.
 */
public final class WholeYard {

    private WholeYard() {}

    public static void main(String[] args) {
        run(System.out);
    }

    static void run(PrintStream out) {
        Site site = StandingData.load(Yard.EDITION).siteOf(stated());
        PlannerParameters offered = PlannerParameters.defaults().withHeads(List.of("multi-4_9"));
        Yard plan = Planner.run(site, offered, Progress.NONE).yard();
        Assessment assessment = Assessor.run(site.with(plan), Progress.NONE);
        say(out, assessment);
    }

    private static Yard stated() {
        return yard("Corner yard")
                .with(
                        structure("house", rectangle(at(0, 40), feet(40), feet(24))),
                        structure("shed", rectangle(at(60, 44), feet(10), feet(8))),
                        paving("path", rectangle(at(0, 36), feet(40), feet(4))),
                        lawn("lawn", rectangle(at(0, 0), feet(45), feet(30))).soil("loam"))
                .with(
                        mains("street", at(-12, -12)).staticPressure(psi(62)).flowTest(gpm(14), psi(50)),
                        pipe("main", polyline(at(-12, -12), at(-6, -6)))
                                .from("street")
                                .series("PVC Schedule 40")
                                .size("1 in"),
                        backflow("garden").on("main").device("bfp-pvb-1").height(inches(18)),
                        manifold("box", at(-6, -6)).on("main"),
                        bib("gate", at(-6, 10)))
                .with(
                        panel("house", at(38, 42)).inside("house").spareWays(2),
                        circuit("garden").from("house").breaker(amps(20)).groundFault(),
                        feed("shed").on("garden").draws(watts(600)),
                        controller("clock").inside("shed").on("garden"),
                        outlet("path", at(41, 37)).on("garden"),
                        luminaires("path", at(6, 35), at(20, 35)).on("garden").wiresNow())
                .with(watering()
                        .climate("sacramento-ca")
                        .days("Mon", "Wed", "Fri", "Sun")
                        .hours("22:00", "06:00"));
    }

    private static void say(PrintStream out, Assessment assessment) {
        Yard yard = assessment.yard();
        out.println("heads: " + yard.water().heads().size() + ", zones: "
                + yard.water().zones().size());
        out.println("trenches: " + show(assessment.digging().total().onGround()) + ", "
                + show(assessment.digging().total().bank()));
        assessment
                .wiring()
                .circuits()
                .forEach(one ->
                        out.println("circuit " + one.id() + ": " + show(one.current()) + " of " + show(one.breaker())));
        out.println("materials: " + assessment.takeoff().lines().size() + " lines");
        out.println("stakes: " + assessment.staking().stakes().size());
        assessment.schedule().peak().ifPresent(week -> out.println("busiest day: " + show(week.needed())));
        out.println("may be built as planned: " + (assessment.hasBreach() ? "no" : "yes, where local codes agree"));
    }

    private static String show(Quantity figure) {
        return Units.show(figure, UnitSystem.US);
    }
}
