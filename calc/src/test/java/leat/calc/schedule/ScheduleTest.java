package leat.calc.schedule;

import static leat.model.plan.Parts.DRIP;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.bed;
import static leat.model.plan.Parts.bubbler;
import static leat.model.plan.Parts.dripLine;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.inches;
import static leat.model.plan.Parts.lawn;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.tree;
import static leat.model.plan.Parts.watering;
import static leat.model.plan.Parts.zone;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.Month;
import java.util.List;
import java.util.stream.Stream;
import leat.calc.Progress;
import leat.calc.assess.Assessment;
import leat.calc.assess.Assessor;
import leat.model.fault.InvalidValueException;
import leat.model.fault.UnfinishedException;
import leat.model.finding.Finding;
import leat.model.finding.Ledger;
import leat.model.finding.Severity;
import leat.model.finding.Status;
import leat.model.id.ObstacleId;
import leat.model.id.ZoneId;
import leat.model.plan.Part;
import leat.model.plan.SurfacePart;
import leat.model.plan.WateringPart;
import leat.model.quantity.Angle;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.quantity.TimeSpan;
import leat.model.water.Climate;
import leat.model.water.ClimateMonth;
import leat.model.water.GrowingPlace;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Schedules of a small lawn in a dry summer. */
@Tag("law")
class ScheduleTest {

    private static final ZoneId EAST = new ZoneId("east");

    private static WateringPart dry() {
        return watering()
                .climate("sacramento-ca")
                .days("Mon", "Wed", "Fri", "Sun")
                .hours("22:00", "06:00");
    }

    private static Assessment assessed(SurfacePart lawn, Part... more) {
        return Assessor.run(WateredLawn.site(lawn, more), Progress.NONE);
    }

    private static ScheduleResult schedule(SurfacePart lawn, Part... more) {
        return assessed(lawn, more).schedule();
    }

    private static List<String> rules(ScheduleResult result) {
        return result.findings().stream()
                .map(finding -> finding.rule().id())
                .distinct()
                .sorted()
                .toList();
    }

    private static double minutes(ScheduleResult result) {
        return result.zones().get(EAST).peak().setting().week().inMinutes();
    }

    @Test
    void aYardThatSaysNothingOfWateringIsLeftAlone() {
        ScheduleResult result = schedule(WateredLawn.grass());
        assertEquals(List.of(), result.findings());
        assertTrue(result.zones().isEmpty()
                && result.months().isEmpty()
                && result.peak().isEmpty());
    }

    @Test
    void withoutClimateThereIsANote() {
        ScheduleResult result = schedule(WateredLawn.grass(), watering().hours("22:00", "06:00"));
        assertEquals(List.of("watering.climate"), rules(result));
        assertEquals(Severity.NOTE, result.findings().get(0).severity());
    }

    @Test
    void zonesThatShareALawnRunAlikeAndGiveWhatItNeeds() {
        ScheduleResult result = schedule(WateredLawn.grass(), dry());
        assertEquals(List.of("watering.rain"), rules(result));
        ZoneSchedule east = result.zones().get(EAST);
        ZoneSchedule west = result.zones().get(new ZoneId("west"));
        assertEquals(west.ground().rate().si(), east.ground().rate().si(), 1e-12);
        for (Month month : Month.values()) {
            ZoneMonth one = east.month(month);
            double neededM = one.balance().gross().metres() * 7;
            double givenM = one.setting().week().si() * east.ground().rate().si();
            assertTrue(givenM >= neededM - 1e-12, month.toString());
            assertTrue(givenM <= neededM + 60 * east.ground().rate().si() * openings(one.setting()), month.toString());
        }
        assertEquals(Month.JULY, result.peak().orElseThrow().month());
    }

    private static double openings(ZoneSetting setting) {
        return setting.days().size() * setting.cycles().value();
    }

    @Test
    void thePeakWeekLiesWithinItsDaysAndHours() {
        PeakWeek peak = schedule(WateredLawn.grass(), dry()).peak().orElseThrow();
        assertTrue(peak.fits());
        assertEquals(TimeSpan.hours(8), peak.allowed());
        DayOfWeek day = DayOfWeek.MONDAY;
        double free = 0;
        for (ValveRun run : peak.runs()) {
            assertTrue(Stream.of("MONDAY", "WEDNESDAY", "FRIDAY", "SUNDAY")
                    .anyMatch(run.day().name()::equals));
            free = run.day() == day ? free : TimeSpan.hours(22).si();
            day = run.day();
            assertTrue(run.start().si() >= free);
            free = run.start().plus(run.length()).si();
            assertTrue(free <= TimeSpan.hours(30).si());
        }
        double runS = peak.runs().stream().mapToDouble(run -> run.length().si()).sum();
        double weekS = schedule(WateredLawn.grass(), dry()).zones().values().stream()
                .mapToDouble(zone -> zone.peak().setting().week().si())
                .sum();
        assertEquals(weekS, runS, 1e-9);
    }

    @Test
    void hoursThatAreTooFewAreABreachWithBothFigures() {
        Assessment assessment =
                assessed(WateredLawn.grass(), dry().days("Mon", "Thu").hours("04:00", "05:00"));
        List<Finding> found = assessment.schedule().findings().stream()
                .filter(finding -> finding.rule().id().equals("watering.hours"))
                .toList();
        assertEquals(1, found.size());
        assertEquals(Severity.BREACH, found.get(0).severity());
        assertEquals(TimeSpan.hours(1), found.get(0).limit());
        PeakWeek peak = assessment.schedule().peak().orElseThrow();
        assertEquals(peak.needed(), found.get(0).measured());
        assertTrue(peak.needed().compareTo(TimeSpan.hours(1)) > 0);
        assertTrue(assessment.hasBreach());
        assertTrue(rules(assessment.schedule()).contains("watering.interval"), "two days leave a wait of four");
    }

    @Test
    void sandWantsWaterMoreOftenAndClayInMoreCycles() {
        ZoneMonth sand = peak("sand");
        ZoneMonth loam = peak("silt loam");
        ZoneMonth clay = peak("clay");
        assertTrue(sand.balance().interval().compareTo(loam.balance().interval()) < 0);
        assertEquals(Count.of(1), sand.setting().cycles());
        assertTrue(clay.setting().cycles().compareTo(loam.setting().cycles()) > 0);
        assertTrue(clay.setting().soak().compareTo(loam.setting().soak()) > 0);
    }

    private static ZoneMonth peak(String soil) {
        SurfacePart lawn = WateredLawn.grass().soil(soil);
        return schedule(lawn, watering().climate("sacramento-ca"))
                .zones()
                .get(EAST)
                .peak();
    }

    @Test
    void clayAtThatRateIsARiskOfRunoff() {
        ScheduleResult result = schedule(WateredLawn.grass().soil("clay"), dry().days("Mon"));
        Finding found = result.findings().stream()
                .filter(finding -> finding.rule().id().equals("watering.cycles"))
                .findFirst()
                .orElseThrow();
        assertEquals(Severity.CAUTION, found.severity());
        assertEquals(result.zones().get(EAST).peak().setting().cycles(), found.measured());
    }

    @Test
    void lessEvenHeadsRunLonger() {
        Assessment assessment = assessed(WateredLawn.grass(), dry());
        ScheduleParameters even = ScheduleParameters.defaults().withCoverage(assessment.coverage());
        ScheduleResult measured = Schedule.run(assessment.site(), even, Progress.NONE);
        ScheduleResult usual = Schedule.run(assessment.site(), ScheduleParameters.defaults(), Progress.NONE);
        assertTrue(measured.zones().get(EAST).ground().measured());
        assertFalse(usual.zones().get(EAST).ground().measured());
        assertEquals(Ratio.of(0.55), usual.zones().get(EAST).ground().evenness());
        assertTrue(minutes(usual) > minutes(measured));
    }

    @Test
    void plantsAndPlacesChangeTheUse() {
        double usual = minutes(schedule(WateredLawn.grass(), dry()));
        double warm = minutes(schedule(WateredLawn.grass().planting("Bermuda and clover"), dry()));
        double hot = minutes(schedule(WateredLawn.grass(), dry().microclimate("lawn", GrowingPlace.Grade.HIGH)));
        double sparse = minutes(schedule(WateredLawn.grass(), dry().density("lawn", GrowingPlace.Grade.LOW)));
        assertTrue(warm < usual && sparse < usual && hot > usual);
    }

    @Test
    void unknownPlantingAndSoilAreNotedWithTheNearestName() {
        SurfacePart bare = lawn("lawn", rectangle(at(0, 0), feet(30), feet(45)));
        assertEquals(List.of("watering.planting", "watering.rain", "watering.soil"), rules(schedule(bare, dry())));
        ScheduleResult typo = schedule(bare.soil("loam").planting("berrys"), dry());
        Finding note = typo.findings().stream()
                .filter(finding -> finding.rule().id().equals("watering.planting"))
                .findFirst()
                .orElseThrow();
        assertEquals("not known by that name, taken as berries (bushes); perhaps say berries", note.advice());
        assertEquals("berries", typo.zones().get(EAST).ground().planting());
    }

    @Test
    void monthsThatAreOffHaveNoWater() {
        ScheduleResult result = schedule(WateredLawn.grass(), dry().off("July", "Aug"));
        ZoneSchedule east = result.zones().get(EAST);
        assertEquals(ZoneSetting.OFF, east.month(Month.JULY).setting());
        assertEquals(0, east.month(Month.AUGUST).volume().si());
        assertEquals(Month.JUNE, result.peak().orElseThrow().month());
    }

    @Test
    void southOfTheEquatorThePeakIsInTheirSummer() {
        ScheduleResult result = schedule(WateredLawn.grass(), watering().climate(bare(-38)));
        assertTrue(List.of(Month.DECEMBER, Month.JANUARY)
                .contains(result.peak().orElseThrow().month()));
        assertEquals(List.of("watering.estimates", "watering.rain"), rules(result));
    }

    /** The same temperatures all year, and nothing else known. */
    private static Climate bare(double latitudeDeg) {
        return new Climate(
                "bare",
                new Angle(latitudeDeg),
                Length.metres(50),
                Stream.of(Month.values())
                        .map(month -> ClimateMonth.of(month, 12, 26))
                        .toList());
    }

    @Test
    void aDripLineIsRunByVolume() {
        ScheduleResult result = schedule(
                WateredLawn.grass(),
                dry(),
                bed("berries", rectangle(at(40, 0), feet(10), feet(30)))
                        .soil("loam")
                        .planting("raspberries")
                        .watering(DRIP),
                manifold("second", at(38, 0)).valves("V3").device("valve-1"),
                dripLine("D1", polyline(at(45, 1), at(45, 29))).family("dripline-2_3-0_3"),
                zone("drip").valve("V3").heads("D1"));
        ZoneSchedule drip = result.zones().get(new ZoneId("drip"));
        ZoneMonth july = drip.month(Month.JULY);
        double areaM2 = 10 * 30 * 0.3048 * 0.3048;
        assertEquals(areaM2, drip.ground().area().si(), 1e-9);
        assertEquals(drip.ground().flow().si() / areaM2, drip.ground().rate().si(), 1e-15);
        assertEquals(Count.of(1), july.setting().cycles());
        double netM3 = july.balance().net().metres() * areaM2 * 31;
        assertEquals(netM3 / (0.4 + 0.6 * 0.85), july.volume().si(), 0.02 * netM3);
    }

    @Test
    void aBubblerWatersTheTreeAtWhichItStands() {
        ScheduleResult result = schedule(
                WateredLawn.grass(),
                dry(),
                tree("old pear", at(20, 20), inches(10)),
                manifold("second", at(38, 0)).valves("V3").device("valve-1"),
                bubbler("B1", at(21, 20)).family("bubbler-0_5"),
                zone("tree").valve("V3").heads("B1"));
        ZoneGround ground = result.zones().get(new ZoneId("tree")).ground();
        assertEquals(new ObstacleId("old pear"), ground.ground());
        assertEquals("apple", ground.planting());
        double radiusM = 12 * 10 * 0.0254;
        assertEquals(Math.PI * radiusM * radiusM, ground.area().si(), 1e-9);
        assertEquals("silt loam", ground.soil().key());
        ScheduleResult noTree = schedule(
                WateredLawn.grass(),
                dry(),
                manifold("second", at(38, 0)).valves("V3").device("valve-1"),
                bubbler("B1", at(21, 20)).family("bubbler-0_5"),
                zone("tree").valve("V3").heads("B1"));
        assertTrue(rules(noTree).contains("watering.ground"));
    }

    @Test
    void everyLedgerEndsInItsFigureToTheLastBit() {
        Assessment assessment = assessed(WateredLawn.grass(), dry());
        ZoneSchedule east = assessment.schedule().zones().get(EAST);
        for (Month month : Month.values()) {
            ZoneMonth row = east.month(month);
            assertEquals(row.setting().week(), value(assessment, "minutes " + ClimateMonth.name(month)));
            assertEquals(row.balance().use(), value(assessment, "use " + ClimateMonth.name(month)));
            assertEquals(row.volume(), value(assessment, "volume " + ClimateMonth.name(month)));
        }
        assertEquals(east.peak().setting().week(), value(assessment, "minutes peak"));
    }

    private static Object value(Assessment assessment, String figure) {
        Ledger ledger = assessment.why("east", figure);
        return ledger.value();
    }

    @Test
    void figuresThatAreNotThereAreRefused() {
        Assessment assessment = assessed(WateredLawn.grass(), dry());
        assertEquals(
                "why: figure is 'minutes Juli'; it must be one of use, held, rain, net, gross, interval, days, cycles,"
                        + " cycle, soak, minutes, volume, and then a month or 'peak', such as 'minutes July'",
                assertThrows(InvalidValueException.class, () -> assessment.why("east", "minutes Juli"))
                        .getMessage());
        assertEquals(
                "zone east has no schedule: no climate is stated",
                assertThrows(
                                UnfinishedException.class,
                                () -> assessed(WateredLawn.grass()).why("east", "minutes July"))
                        .getMessage());
    }

    @Test
    void aStopIsHeard() {
        Progress stopped = new Progress() {
            @Override
            public boolean stopped() {
                return true;
            }

            @Override
            public void at(double fraction, String what) {}
        };
        ScheduleResult result =
                Schedule.run(WateredLawn.site(WateredLawn.grass(), dry()), ScheduleParameters.defaults(), stopped);
        assertEquals(Status.STOPPED, result.status());
    }

    @Test
    void theSameYardGivesTheSameSchedule() {
        assertEquals(schedule(WateredLawn.grass(), dry()), schedule(WateredLawn.grass(), dry()));
    }
}
