package leat.calc.placement;

import static leat.model.plan.Parts.*;

import java.util.List;
import leat.calc.Progress;
import leat.calc.Proposal;
import leat.calc.coverage.Coverage;
import leat.calc.coverage.CoverageParameters;
import leat.calc.coverage.CoverageResult;
import leat.document.StandingData;
import leat.model.plan.Yard;
import leat.model.water.Head;

final class PlacementTry {
    static final StandingData TABLES = StandingData.load(Yard.EDITION);

    public static void main(String[] args) {
        show("rect 30x45", yard("a").with(lawn("lawn", rectangle(at(0, 0), feet(30), feet(45)))), "spray-4_6");
        show("rect 30x45 default", yard("a").with(lawn("lawn", rectangle(at(0, 0), feet(30), feet(45)))));
        show(
                "L",
                yard("a")
                        .units(METRIC)
                        .with(lawn("lawn", polygon(at(0, 0), at(18, 0), at(18, 8), at(10, 8), at(10, 20), at(0, 20)))),
                "spray-4_6",
                "spray-3_7");
        show(
                "wedge",
                yard("a").units(METRIC).with(lawn("lawn", polygon(at(0, 0), at(20, 0), at(16, 9), at(0, 3)))),
                "spray-4_6",
                "spray-3_7",
                "spray-3_0");
        show("circle", yard("a").units(METRIC).with(lawn("lawn", circle(at(0, 0), metres(8)))), "spray-4_6");
        show(
                "hole",
                yard("a")
                        .units(METRIC)
                        .with(lawn(
                                "lawn",
                                rectangle(at(0, 0), metres(16), metres(12)).without(circle(at(8, 6), metres(2))))),
                "spray-4_6");
        show(
                "hole paved",
                yard("a")
                        .units(METRIC)
                        .with(
                                lawn("lawn", rectangle(at(0, 0), metres(16), metres(12))),
                                paving("p", circle(at(8, 6), metres(2))),
                                paving("n", rectangle(at(-2, 12), metres(20), metres(2)))),
                "spray-4_6");
        show("tern", ternHill());
        show("tern multi", ternHill(), "multi-7_6", "multi-6_1", "spray-3_7");
    }

    static Yard ternHill() {
        return yard("Tern Hill")
                .with(
                        traverse(at(0, 0))
                                .go("N 4°10' W", feet(150.2))
                                .go("S 80°30' E", feet(124.0))
                                .go("S 9°40' W", feet(128.6))
                                .close(),
                        structure("house", rectangle(at(20, 46), feet(42), feet(30))),
                        structure("workshop", rectangle(at(66, 30), feet(18), feet(14))),
                        structure("summer house", circle(at(100, 114), feet(5))),
                        paving("drive", rectangle(at(67, 3), feet(12), feet(27))),
                        paving("boules court", rectangle(at(43, 85), feet(42), feet(13))),
                        lawn("meadow", polygon(at(2, 4), at(63, 4), at(63, 38), at(1, 42))),
                        lawn(
                                "back lawn",
                                polygon(at(4, 82), at(40, 82), at(40, 101), at(92, 101), at(94, 126), at(2, 141))),
                        bed("kitchen bed", rectangle(at(2, 52), feet(14), feet(22)))
                                .watering(HEADS));
    }

    static void show(String name, Yard yard, String... families) {
        PlacementParameters p = PlacementParameters.defaults();
        if (families.length > 0) p = p.withFamilies(List.of(families));
        long t0 = System.nanoTime();
        Proposal proposal = Placement.run(TABLES.siteOf(yard), p, Progress.NONE);
        double s = (System.nanoTime() - t0) / 1e9;
        System.out.printf(
                "== %s: %.2f s %s heads %d%n",
                name, s, proposal.status(), proposal.yard().water().heads().size());
        proposal.bounds()
                .forEach(b -> System.out.println("   " + b.measure() + " " + b.reached() + " least " + b.least()));
        for (Head h : proposal.yard().water().heads()) {
            System.out.printf(
                    "   %s %s (%.2f, %.2f) r %.2f start %.1f sweep %.1f%n",
                    h.id(),
                    h.family(),
                    h.at().xM(),
                    h.at().yM(),
                    h.sector().get().radius().metres(),
                    h.sector().get().arc().start().degrees(),
                    h.sector().get().arc().sweep().degrees());
        }
        CoverageResult c = Coverage.run(TABLES.siteOf(proposal.yard()), CoverageParameters.defaults(), Progress.NONE);
        c.surfaces()
                .forEach((id, k) -> System.out.printf(
                        "   %s two %.4f one %.4f CU %.3f DU %.3f mean %.1f mm/h%n",
                        id,
                        k.reachedByTwo().value(),
                        k.reachedByOne().value(),
                        k.christiansen().value(),
                        k.lowQuarter().value(),
                        k.mean().inMillimetresPerHour()));
        c.findings().forEach(f -> System.out.println("   ! " + f.rule().id() + " " + f.subject() + " " + f.measured()));
        Proposal again = Placement.run(TABLES.siteOf(proposal.yard()), p, Progress.NONE);
        System.out.println("   again equal: " + again.yard().equals(proposal.yard()));
    }
}
