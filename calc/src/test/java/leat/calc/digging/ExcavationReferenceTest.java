package leat.calc.digging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import leat.calc.Records;
import leat.calc.Records.Figure;
import leat.calc.digging.internal.Earthwork;
import leat.calc.digging.internal.Volumes;
import leat.document.StandingData;
import leat.model.plan.Yard;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.quantity.Volume;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Source: checks/excavation.json: textbook examples and public texts on swell and loads, OSHA's rules for trenches as
 * printed in training texts, and plain geometry worked out by a second program.
 */
@Tag("reference")
class ExcavationReferenceTest {

    private static final double FOOT_M = 0.3048;
    private static final double INCH_M = 0.0254;
    private static final double CUBIC_YARD_M3 = Volume.cubicYards(1).cubicMetres();

    private static Stream<Figure> of(String prefix) {
        return Records.of("excavation", prefix).stream();
    }

    static Stream<Figure> swells() {
        return of("ex-swell-").filter(one -> one.json().required("expected").has("loose_yd3"));
    }

    @ParameterizedTest
    @MethodSource("swells")
    void looseEarth(Figure record) {
        double bankM3 = record.input("bank_yd3") * CUBIC_YARD_M3;
        record.expect("loose_yd3", Earthwork.looseM3(bankM3, record.input("swell")) / CUBIC_YARD_M3);
    }

    @Test
    void swellFromDensities() {
        Figure record = Records.one("excavation", "ex-swell-density");
        double ratio = Earthwork.swellRatio(record.input("bank_density_lb_yd3"), record.input("loose_density_lb_yd3"));
        record.expect("swell_percent", Ratio.of(ratio).inPercent());
    }

    @Test
    void loadsAndWhatFillsTamped() {
        Figure loads = Records.one("excavation", "ex-loads");
        loads.expect("loads", Earthwork.loadsCount(loads.input("loose_yd3"), loads.input("truck_yd3")));
        Figure shrink = Records.one("excavation", "ex-shrink");
        shrink.expect("bank_yd3", Earthwork.bankM3(shrink.input("compacted_yd3"), shrink.input("factor")));
    }

    static Stream<Figure> trenches() {
        return of("ex-trench-");
    }

    @ParameterizedTest
    @MethodSource("trenches")
    void trenchVolumes(Figure record) {
        var volume = new Volume(Volumes.trenchM3(
                record.input("length_ft") * FOOT_M,
                record.input("bottom_width_ft") * FOOT_M,
                record.input("depth_ft") * FOOT_M,
                record.input("side_slope_h_per_v")));
        record.expect("volume_ft3", volume.inCubicFeet());
        record.expect("volume_yd3", volume.inCubicYards());
    }

    @Test
    void beddingAroundAPipe() {
        Figure record = Records.one("excavation", "ex-bedding");
        var volume = new Volume(Volumes.bedM3(
                record.input("length_ft") * FOOT_M,
                record.input("width_in") * INCH_M,
                record.input("below_in") * INCH_M,
                record.input("above_in") * INCH_M,
                record.input("pipe_od_in") * INCH_M));
        record.expect("volume_ft3", volume.inCubicFeet());
    }

    @Test
    void waterInAPipe() {
        Figure record = Records.one("excavation", "ex-pipe-volume");
        double m3 = Volumes.roundM3(record.input("length_ft") * FOOT_M, record.input("inside_diameter_in") * INCH_M);
        record.expect("volume_gal", new Volume(m3).inGallons());
    }

    static Stream<Figure> layers() {
        return Stream.concat(of("ex-mulch"), of("ex-concrete"));
    }

    @ParameterizedTest
    @MethodSource("layers")
    void layersOfEvenDepth(Figure record) {
        double m3 = Volumes.layerM3(record.input("area_ft2") * FOOT_M * FOOT_M, record.input("depth_in") * INCH_M);
        record.expect("volume_yd3", new Volume(m3).inCubicYards());
    }

    static Stream<Figure> slopes() {
        return of("ex-slope-angle");
    }

    @ParameterizedTest
    @MethodSource("slopes")
    void slopesInDegrees(Figure record) {
        record.expect("degrees", Math.toDegrees(Volumes.sideRad(record.input("h_per_v"))));
    }

    /** The limits that findings are held against are those of the law, to the inch. */
    @Test
    void depthsAtWhichTheLawAsksForMore() {
        var rules = StandingData.load(Yard.EDITION).rules();
        Records.one("excavation", "ex-osha-5ft")
                .expect("value", feet(rules.get("digging.depth.support").limit().si()));
        Records.one("excavation", "ex-osha-ladder-depth")
                .expect("value", feet(rules.get("digging.depth.exit").limit().si()));
        Records.one("excavation", "ex-osha-ladder-travel").expect("value", DigLaw.MOST_TO_EXIT.inFeet());
        Records.one("excavation", "ex-osha-spoil").expect("value", DigLaw.SPOIL_SETBACK.inFeet());
        Records.one("excavation", "ex-osha-engineer").expect("value", DigLaw.ENGINEER_DEPTH.inFeet());
    }

    @Test
    void steepestSidesBySoil() {
        Records.one("excavation", "ex-osha-slope-A").expect("value", DigLaw.SLOPE_TYPE_A.value());
        Records.one("excavation", "ex-osha-slope-B").expect("value", DigLaw.SLOPE_TYPE_B.value());
        Records.one("excavation", "ex-osha-slope-C").expect("value", DigLaw.SLOPE_TYPE_C.value());
    }

    /** Source: the ranges as printed in Peurifoy; clay of 30 and 40 %, in the examples above, lies in that of clay. */
    @Test
    void swellIsTheMiddleOfThePrintedRange() {
        assertEquals(0.45, Earth.CLAY.swell().value(), 1e-12);
        assertEquals(0.225, Earth.LOAM.swell().value(), 1e-12);
        assertTrue(Earth.CLAY.leastSwell().value() <= 0.30
                && 0.40 <= Earth.CLAY.mostSwell().value());
    }

    private static double feet(double metres) {
        return Length.metres(metres).inFeet();
    }
}
