package leat.model.plan;

import static leat.model.Refusals.refused;
import static leat.model.plan.Parts.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import leat.model.catalog.FlowRule;
import leat.model.catalog.HeadFamily;
import leat.model.catalog.RuleLimit;
import leat.model.fault.UnfinishedException;
import leat.model.geometry.Point;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.id.SurfaceId;
import leat.model.id.ZoneId;
import leat.model.quantity.Length;
import leat.model.quantity.UnitSystem;
import leat.model.site.Phase;
import leat.model.site.Watering;
import leat.model.water.Lateral;
import leat.model.water.Rotor;
import leat.model.water.Water;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class PartsTest {

    private final Yard plot = Example.plot();

    @Tag("law")
    @Test
    void theExampleBecomesWhatItSays() {
        assertEquals(2400, plot.terrain().lot().orElseThrow().area().inSquareFeet(), 1e-6);
        assertEquals(
                List.of("front"),
                plot.terrain().lawns().stream().map(one -> one.id().name()).toList());
        assertEquals(
                Watering.HEADS,
                plot.terrain().surface(new SurfaceId("front")).orElseThrow().watering());
        assertEquals(
                Watering.DRIP,
                plot.terrain().surface(new SurfaceId("roses")).orElseThrow().watering());
        assertEquals(
                Watering.NONE,
                plot.terrain().surface(new SurfaceId("path")).orElseThrow().watering());
        assertEquals(
                Phase.LATER,
                plot.terrain().surface(new SurfaceId("shed")).orElseThrow().phase());
        assertEquals(
                Optional.of("silt loam"),
                plot.terrain().surface(new SurfaceId("front")).orElseThrow().soil());
        Rotor rotor = (Rotor) plot.water().head(new HeadId("S2")).orElseThrow();
        assertEquals(Point.at(Length.feet(25), Length.feet(5)), rotor.at());
        assertEquals(Length.feet(25), rotor.radius());
        assertEquals(48, plot.water().sources().get(0).pressureAt(gpm(14)).inPsi(), 1e-9);
        assertEquals(
                1.5,
                plot.terrain()
                        .ground()
                        .levelFinished(Point.at(feet(20), feet(30)))
                        .inFeet(),
                1e-9);
        assertEquals(
                List.of(new RuleLimit("trench.cover", inches(18))),
                plot.additions().limits());
        assertEquals(Yard.EDITION, plot.edition());
    }

    @Tag("law")
    @Test
    void pipesBelongToTheMainOrToTheZoneOfTheValveTheyHangOn() {
        assertEquals(
                List.of("service", "main"),
                plot.water().main().runs().stream().map(r -> r.id().name()).toList());
        Lateral lateral = plot.water().lateral(new ZoneId("front")).orElseThrow();
        assertEquals(
                List.of("F1", "F2"),
                lateral.runs().stream().map(r -> r.id().name()).toList());
        assertEquals(new PipeId("F2"), lateral.heads().get(new HeadId("S2")));
        assertEquals(Optional.empty(), plot.water().lateral(new ZoneId("beds")));
        assertEquals(Water.IRRIGATION, plot.water().waterIn(new PipeId("F2")));
        assertEquals(Water.DRINKING, plot.water().waterIn(new PipeId("service")));
    }

    @Tag("law")
    @Test
    void theOrderOfThePartsDoesNotMatter() {
        Yard a = yard("Y")
                .with(
                        zone("z").valve("V").heads("H"),
                        pipe("L", polyline(at(0, 0), at(1, 1)))
                                .from("V")
                                .series("PE")
                                .to("H"),
                        bubbler("H", at(1, 1)).family("b"),
                        manifold("m", at(0, 0)).on("P").valves("V"),
                        pipe("P", polyline(at(0, 1), at(0, 0))).from("s").series("PE"),
                        mains("s", at(0, 1)).staticPressure(psi(50)));
        Yard b = yard("Y")
                .with(
                        mains("s", at(0, 1)).staticPressure(psi(50)),
                        pipe("P", polyline(at(0, 1), at(0, 0))).from("s").series("PE"),
                        manifold("m", at(0, 0)).on("P").valves("V"),
                        bubbler("H", at(1, 1)).family("b"),
                        group(
                                pipe("L", polyline(at(0, 0), at(1, 1)))
                                        .from("V")
                                        .series("PE")
                                        .to("H"),
                                zone("z").valve("V").heads("H")));
        assertEquals(a, b);
    }

    @Tag("law")
    @Test
    void aYardGrowsByWith() {
        Yard grown = plot.with(
                pipe("F3", polyline(at(25, 5), at(25, 25))).from("F2").series("PVC Schedule 40"),
                pipe("D0", polyline(at(3, 4), at(29, 49)))
                        .from("V2")
                        .series("PVC Schedule 40")
                        .to("D1"),
                bib("far", at(3, 3)).on("main"));
        assertEquals(
                List.of("F1", "F2", "F3"),
                grown.water().lateral(new ZoneId("front")).orElseThrow().runs().stream()
                        .map(r -> r.id().name())
                        .toList());
        assertEquals(
                1,
                grown.water().lateral(new ZoneId("beds")).orElseThrow().runs().size());
        assertEquals(plot.terrain(), grown.terrain());
        assertEquals(plot.water().heads(), grown.water().heads());
        assertEquals(2, grown.water().bibs().size());
        assertEquals(plot, plot.with(), "nothing added, nothing changed");
        Yard inTwoSteps = yard("Plot")
                .with(mains("s", at(0, 0)).staticPressure(psi(50)))
                .with(pipe("P", polyline(at(0, 0), at(0, 9))).from("s").series("PE"));
        assertEquals(
                inTwoSteps,
                yard("Plot")
                        .with(
                                mains("s", at(0, 0)).staticPressure(psi(50)),
                                pipe("P", polyline(at(0, 0), at(0, 9)))
                                        .from("s")
                                        .series("PE")));
    }

    @Tag("law")
    @Test
    void plainNumbersAreInTheYardsUnit() {
        Yard us = yard("A").with(mains("s", at(10, 20)).staticPressure(psi(50)));
        Yard metric = yard("A").units(METRIC).with(mains("s", at(10, 20)).staticPressure(psi(50)));
        assertEquals(Point.at(feet(10), feet(20)), us.water().sources().get(0).at());
        assertEquals(new Point(10, 20), metric.water().sources().get(0).at());
        Yard lengths =
                yard("A").units(METRIC).with(mains("s", at(feet(10), feet(20))).staticPressure(psi(50)));
        assertEquals(us.water(), lengths.water());
        assertEquals(UnitSystem.METRIC, us.units(METRIC).units());
        assertEquals(us.water(), us.units(METRIC).water(), "what stands there stays where it stands");
    }

    @Tag("law")
    @Test
    void partsAreNotChangedByTheirSetters() {
        SourcePart plain = mains("s", at(0, 0));
        SourcePart told = plain.staticPressure(psi(50));
        assertEquals(
                psi(60),
                yard("A")
                        .with(told.staticPressure(psi(60)))
                        .water()
                        .sources()
                        .get(0)
                        .staticPressure());
        assertEquals(psi(50), yard("A").with(told).water().sources().get(0).staticPressure());
        assertThrows(UnfinishedException.class, () -> yard("A").with(plain));
    }

    /** 40 mm/h over squares of 3.7 m is 9.1267 L/min, as the row spray-3_7 of the standing table has it. */
    @Tag("law")
    @Test
    void familiesOfTheYardsOwn() {
        FamilyPart told = sprayFamily("mine")
                .radius(metres(2.8), metres(3.7))
                .pressure(psi(20), psi(30), psi(70))
                .precipitation(millimetresPerHour(40));
        HeadFamily family = yard("A").with(told).additions().heads().get(0);
        assertEquals(9.1267, family.jet().flow().inLitresPerMinute(), 0.00005);
        assertEquals(FlowRule.BY_AREA, family.jet().rule());
        HeadFamily other = yard("A").with(told.flow(gpm(2))).additions().heads().get(0);
        assertEquals(gpm(2), other.jet().flow(), "what was said last counts");
        assertEquals(FlowRule.FIXED, other.jet().rule());
    }

    @Tag("pinned")
    @Test
    void allThatIsMissingIsToldAtOnce() {
        UnfinishedException e = assertThrows(
                UnfinishedException.class,
                () -> yard("A")
                        .with(
                                mains("street", at(0, 0)),
                                pump("well", at(0, 0)).shutOff(psi(60)),
                                tank("butt", at(0, 0)),
                                rotor("R1", at(0, 0)).radius(feet(20)),
                                bubbler("B1", at(0, 0)),
                                pipe("P1", polyline(at(0, 0), at(1, 1))).from("street"),
                                backflow("cage").on("P1"),
                                zone("front").heads("R1"),
                                trench("T", polyline(at(0, 0), at(1, 1))),
                                rotorFamily("mine").pressure(psi(20), psi(30), psi(70)),
                                traverse(at(0, 0)).go("N 0° E", feet(60))));
        assertEquals(
                List.of(
                        "mains street: missing staticPressure",
                        "pump well: missing duty",
                        "tank butt: missing waterLevel",
                        "head R1: missing family and arc",
                        "head B1: missing family",
                        "pipe P1: missing series",
                        "backflow preventer cage: missing device and height",
                        "zone front: missing valve",
                        "trench T: missing depth",
                        "head family mine: missing radius and flow or precipitation",
                        "traverse: it does not end; add close() or balance()"),
                e.complaints());
        assertEquals(String.join("\n", e.complaints()), e.getMessage());
    }

    @Tag("pinned")
    @Test
    void unknownNamesAreToldAtOnceWithTheNearestRightOnes() {
        UnfinishedException e = assertThrows(
                UnfinishedException.class,
                () -> plot.with(
                        pipe("P9", polyline(at(0, 0), at(1, 1))).from("steret").series("PE"),
                        pipe("P10", polyline(at(0, 0), at(1, 1)))
                                .from("V1")
                                .series("PE")
                                .to("S9"),
                        pipe("P11", polyline(at(0, 0), at(1, 1)))
                                .from("V1")
                                .series("PE")
                                .to("D1"),
                        pipe("P12", polyline(at(0, 0), at(1, 1)))
                                .from("main")
                                .series("PE")
                                .to("D1"),
                        zone("back").valve("V11").heads("S3", "nowhere"),
                        backflow("second").on("serviec").device("bfp-pvb-1").height(inches(12)),
                        manifold("far", at(0, 0)).on("F1"),
                        bib("wall", at(0, 0)).on("mian"),
                        trench("T9", polyline(at(0, 0), at(1, 1)))
                                .depth(inches(9))
                                .holds("F1", "F11")));
        assertEquals(
                List.of(
                        "pipe P9: from is 'steret'; no source, pipe or valve has that name; perhaps 'street'",
                        "zone back: valve is 'V11'; no valve has that name; perhaps 'V1'",
                        "zone back: heads is 'S3'; no head has that name; perhaps 'S1'",
                        "zone back: heads is 'nowhere'; no head has that name",
                        "pipe P10: to is 'S9'; no head has that name; perhaps 'S1'",
                        "pipe P11: to is 'D1', which is no head of its zone front",
                        "pipe P12: to is 'D1', which pipe P11 ends at already",
                        "pipe P12: to is 'D1', but no valve stands between the source and that head",
                        "backflow preventer second: on is 'serviec'; no pipe of the main has that name; perhaps 'service'",
                        "manifold far: on is 'F1'; no pipe of the main has that name",
                        "hose bib wall: on is 'mian'; no pipe of the main has that name; perhaps 'main'",
                        "trench T9: holds is 'F11'; no pipe has that name; perhaps 'F1'"),
                e.complaints());
    }

    @Tag("pinned")
    @Test
    void aLineOnThePlanHasNoDoubt() {
        UnfinishedException e = assertThrows(
                UnfinishedException.class,
                () -> yard("A")
                        .with(setback("fence", polyline(at(0, 0), at(9, 0))).doubt(feet(2))));
        assertEquals(
                List.of("limit line fence: it has a doubt; a line on the plan lies where it is drawn"), e.complaints());
    }

    @Tag("pinned")
    @Test
    void whatAThingDoesNotHaveIsNotLostWithoutAWord() {
        refused(
                "tank butt: it has no flowTest",
                () -> yard("A").with(tank("butt", at(0, 0)).waterLevel(feet(6)).flowTest(gpm(3), psi(2))));
        refused(
                "bubbler B: it has no arc and no radius",
                () -> yard("A")
                        .with(bubbler("B", at(0, 0)).family("b").fullCircle().radius(feet(3))));
    }

    @Tag("pinned")
    @Test
    void namesThatCouldMeanTwoThings() {
        refused(
                "name 'main': a source and a pipe have it; pipes could not tell which feeds them",
                () -> plot.with(mains("main", at(0, 0)).staticPressure(psi(50))));
        refused(
                "name 'V1': a valve and a pipe have it; pipes could not tell which feeds them",
                () -> yard("A")
                        .with(
                                mains("s", at(0, 0)).staticPressure(psi(50)),
                                manifold("m", at(0, 0)).valves("V1"),
                                pipe("V1", polyline(at(0, 0), at(1, 1)))
                                        .from("s")
                                        .series("PE")));
        refused(
                "head S1: id is used twice; it must be unique among its kind",
                () -> plot.with(bubbler("S1", at(0, 0)).family("b")));
        refused(
                "traverse: the yard has one already",
                () -> plot.with(traverse(at(0, 0))
                        .go("N 0° E", feet(60))
                        .go("N 90° E", feet(40))
                        .go("S 45° W", feet(20))
                        .close()));
    }

    @Tag("pinned")
    @Test
    void pipesThatHangOnNothing() {
        refused(
                "pipe L: it is fed by valve V, which no zone has",
                () -> yard("A")
                        .with(
                                manifold("m", at(0, 0)).valves("V"),
                                pipe("L", polyline(at(0, 0), at(1, 1)))
                                        .from("V")
                                        .series("PE")));
        refused(
                "main, pipe A: from is in a loop through A, B; it must be a feed from outside it",
                () -> yard("Y")
                        .with(
                                pipe("A", polyline(at(0, 0), at(1, 1)))
                                        .from("B")
                                        .series("PE"),
                                pipe("B", polyline(at(0, 0), at(1, 1)))
                                        .from("A")
                                        .series("PE")));
    }

    @Tag("pinned")
    @Test
    void shapesThatCannotBeNameTheirOwner() {
        refused(
                "surface front, region: outer is a line whose side 3 meets its side 1; it must be one that neither crosses nor touches itself",
                () -> yard("A").with(lawn("front", polygon(at(0, 0), at(1, 1), at(1, 0), at(0, 1)))));
        refused(
                "pipe P, route: points is a list of 1; it must be a list of at least 2",
                () -> yard("A").with(pipe("P", polyline(at(0, 0))).from("s").series("PE")));
        refused("circle: radius is 0 m; it must be more than 0 m", () -> circle(at(0, 0), feet(0)));
        refused(
                "rectangle: width to the east is -0.3048 m; it must be more than 0 m",
                () -> rectangle(at(0, 0), feet(-1), feet(2)));
        refused("place: east is NaN; it must be a finite number", () -> at(Double.NaN, 0));
        refused(
                "head family f, jet: leastRadius is 3 m; it must be at most the radius 2 m",
                () -> yard("A")
                        .with(sprayFamily("f")
                                .radius(metres(3), metres(2))
                                .pressure(psi(20), psi(30), psi(70))
                                .flow(gpm(1))));
        refused("polyline: places[1] is missing; it must be given", () -> polyline(at(0, 0), null));
        refused("yard A: parts[0] is missing; it must be given", () -> yard("A").with((Part) null));
        refused("zone z: heads[0] is missing; it must be given", () -> zone("z").heads((String) null));
    }

    @Tag("law")
    @Test
    void circlesAreNearlyRoundAndRectanglesExact() {
        double circle = circle(at(5, 5), metres(10)).in(METRIC).area().squareMetres();
        assertEquals(Math.PI * 100, circle, 0.003 * Math.PI * 100);
        assertTrue(circle < Math.PI * 100);
        assertEquals(
                6, rectangle(at(1, 2), metres(2), metres(3)).in(METRIC).area().squareMetres(), 1e-12);
        assertFalse(rectangle(at(0, 0), metres(4), metres(4))
                .without(circle(at(2, 2), metres(1)))
                .in(METRIC)
                .contains(new Point(2, 2)));
    }
}
