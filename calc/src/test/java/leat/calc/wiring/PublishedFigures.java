package leat.calc.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.calc.internal.pipes.Check;
import leat.calc.wiring.internal.CableTree;
import leat.calc.wiring.internal.CopperWire;
import leat.calc.wiring.internal.ValveWires;
import leat.model.catalog.AmpacityFactor;
import leat.model.catalog.BuriedAs;
import leat.model.catalog.BuriedUnder;
import leat.model.catalog.ConductorSpec;
import leat.model.catalog.ConduitSpec;
import leat.model.catalog.ElectricalTables;
import leat.model.catalog.InsulationColumn;
import leat.model.power.CodeFamily;
import leat.model.power.WireGroup;
import leat.model.power.WiringMethod;
import leat.model.quantity.Current;
import leat.model.quantity.Length;
import leat.model.quantity.Power;
import leat.model.quantity.Ratio;
import leat.model.quantity.Resistance;
import leat.model.quantity.Voltage;

/** Asks the code, its tables or a kernel what a record of checks/electrical.json prints, by the start of its id. */
final class PublishedFigures {

    private static final double SQUARE_INCH_M2 = Check.INCH_M * Check.INCH_M;
    private static final double CUBIC_INCH_M3 = SQUARE_INCH_M2 * Check.INCH_M;
    private static final double CIRCULAR_MIL_M2 = Math.PI / 4 * Math.pow(Check.INCH_M / 1_000, 2);
    private static final double THOUSAND_FEET_M = 1_000 * Check.FOOT_M;

    /** Stranded conductors are longer than they look by the lay of their strands; NFPA 70 reckons 2 %. */
    private static final double STRANDING = 1.02;

    private static final ElectricalCode CODE = Codes.NFPA;
    private static final ElectricalTables TABLES =
            Codes.site(CodeFamily.NFPA_70).catalog().electrical();

    private static final Map<String, Consumer<Check>> BY_START = new TreeMap<>();

    static {
        BY_START.put("el-t8-", PublishedFigures::resistanceAt75);
        BY_START.put("el-awg-", PublishedFigures::wireTable);
        BY_START.put("el-awg-geom-", PublishedFigures::diameter);
        BY_START.put("el-iacs", check -> check.expect("ohm_mm2_per_m", CopperWire.RESISTIVITY_OHM_M * 1e6));
        BY_START.put("el-t5-", PublishedFigures::insulatedArea);
        BY_START.put("el-t4-", PublishedFigures::conduitArea);
        BY_START.put("el-t1-", PublishedFigures::fillLimit);
        BY_START.put("el-annexC-", PublishedFigures::annexC);
        BY_START.put("el-rmc-12-34", check -> mostEqual(check, "RMC", "3/4", "12"));
        BY_START.put("el-310-", PublishedFigures::ampacity);
        BY_START.put("el-adj-", PublishedFigures::neighbours);
        BY_START.put("el-adj-example", PublishedFigures::nineConductors);
        BY_START.put("el-temp-", PublishedFigures::ambient);
        BY_START.put("el-egc-", PublishedFigures::grounding);
        BY_START.put("el-egc-upsize", PublishedFigures::enlargedGrounding);
        BY_START.put("el-cover-", PublishedFigures::cover);
        BY_START.put("el-box-", PublishedFigures::boxRoom);
        BY_START.put("el-box-ex1", PublishedFigures::singleGangBox);
        BY_START.put("el-vd-", PublishedFigures::dropByConstant);
        BY_START.put("el-vd-t8-", PublishedFigures::drop);
        BY_START.put("el-24v-", PublishedFigures::valveWires);
        BY_START.put("el-mv90-", PublishedFigures::millivolts);
        BY_START.put("el-rule-gfci-outdoor", PublishedFigures::groundFault);
        BY_START.put("el-rule-vd-branch", check -> dropLimit(check, DropSpan.BRANCH));
        BY_START.put("el-rule-vd-total", check -> dropLimit(check, DropSpan.TOTAL));
        BY_START.put("el-residential-load", PublishedFigures::loadCurrent);
    }

    private PublishedFigures() {}

    static boolean asks(String id) {
        return BY_START.keySet().stream().anyMatch(id::startsWith);
    }

    /** The longest start that fits decides. */
    static void compare(Check check) {
        BY_START.entrySet().stream()
                .filter(entry -> check.text("id").startsWith(entry.getKey()))
                .max((a, b) -> a.getKey().length() - b.getKey().length())
                .orElseThrow()
                .getValue()
                .accept(check);
    }

    /** The part of the id after that start, with fractions as the trade writes them. */
    private static String rest(Check check, String start) {
        return check.text("id").substring(start.length()).replace('_', '/');
    }

    private static void resistanceAt75(Check check) {
        boolean stranded = check.input("stranded") == 1;
        ConductorSpec wire = CODE.conductor(check.inputs().get("awg").stringValue());
        Resistance perMetre =
                stranded ? wire.metal().perMetre() : wire.metal().solid().orElseThrow();
        double printed = check.json().get("expected").get("ohm_per_kft").doubleValue();
        assertEquals(printed, perMetre.ohms() * THOUSAND_FEET_M, 1e-12, check.toString());
        double areaM2 = check.input("area_cmil") * CIRCULAR_MIL_M2;
        double byFormula = CopperWire.ohmPerM(areaM2, 75) * THOUSAND_FEET_M;
        check.expect("ohm_per_kft", stranded ? STRANDING * byFormula : byFormula);
    }

    /** Sizes finer than the tables of codes are asked of the formula only. */
    private static void wireTable(Check check) {
        double printedCmil = check.json().get("expected").get("area_cmil").doubleValue();
        check.expect("ohm_per_kft", CopperWire.ohmPerM(printedCmil * CIRCULAR_MIL_M2, 20) * THOUSAND_FEET_M);
        String size = String.valueOf((int) check.input("awg"));
        CODE.conductors().stream()
                .filter(one -> one.size().equals(size))
                .findFirst()
                .ifPresent(one -> {
                    double cmil = one.metal().area().si() / CIRCULAR_MIL_M2;
                    assertEquals(printedCmil, cmil, 0.003 * printedCmil, check.toString()); // 1,620 for 1,624.3
                    assertEquals(
                            check.json().get("expected").get("diameter_mil").doubleValue(),
                            Math.sqrt(cmil),
                            0.0015 * Math.sqrt(cmil),
                            check.toString());
                });
    }

    /** The code prints areas with four digits, so diameters follow to two parts in ten thousand. */
    private static void diameter(Check check) {
        ConductorSpec wire = CODE.conductor(String.valueOf((int) check.input("awg")));
        double diameterMil = Math.sqrt(wire.metal().area().si() / CIRCULAR_MIL_M2);
        double printed = check.json().get("expected").get("diameter_mil").doubleValue();
        assertEquals(printed, diameterMil, 2.5e-4 * printed, check.toString());
    }

    private static void insulatedArea(Check check) {
        check.expect(
                "area_in2", CODE.conductor(rest(check, "el-t5-")).insulated().si() / SQUARE_INCH_M2);
    }

    private static void conduitArea(Check check) {
        Matcher id = matched("el-t4-(40|80|emt)-(.+)", check);
        String series = id.group(1).equals("emt") ? "EMT" : "PVC-" + id.group(1);
        ConduitSpec conduit = TABLES.conduit(series, id.group(2).replace('_', '/'));
        double areaIn2 = conduit.area().si() / SQUARE_INCH_M2;
        check.expect("area_in2", areaIn2);
        double boreIn = conduit.bore().inInches();
        check.expect("area_in2", Math.PI / 4 * boreIn * boreIn);
        if (series.equals("EMT")) {
            check.expect("one_wire_53_in2", areaIn2 * CODE.fillLimit(1).limit().si());
            check.expect("two_wires_31_in2", areaIn2 * CODE.fillLimit(2).limit().si());
            check.expect("over_two_40_in2", areaIn2 * CODE.fillLimit(3).limit().si());
        }
    }

    private static void fillLimit(Check check) {
        int count = (int) check.input("conductors");
        check.expect("percent", percent((Ratio) CODE.fillLimit(count).limit()));
    }

    private static void annexC(Check check) {
        Matcher id = matched("el-annexC-(40|80)-([0-9]+)-(.+)", check);
        mostEqual(check, "PVC-" + id.group(1), id.group(3).replace('_', '/'), id.group(2));
    }

    private static void mostEqual(Check check, String series, String size, String wire) {
        check.expect(
                "count",
                CODE.mostEqual(TABLES.conduit(series, size), CODE.conductor(wire))
                        .value()
                        .si());
    }

    private static void ampacity(Check check) {
        ConductorSpec wire = CODE.conductor(check.inputs().get("awg").stringValue());
        check.expect("a60", wire.ampacity(60).si());
        check.expect("a75", wire.ampacity(75).si());
        check.expect("a90", wire.ampacity(90).si());
        Laying cable = Laying.usual(WiringMethod.BURIED_CABLE, 2);
        Laying marked = Laying.usual(WiringMethod.IN_CONDUIT, 3).withTerminals(75);
        check.expect("a60", CODE.ampacity(wire, cable).value().si());
        check.expect("a75", CODE.ampacity(wire, marked).value().si());
    }

    /** By a conductor that no terminal limits at these counts. */
    private static void neighbours(Check check) {
        ConductorSpec wire = CODE.conductor("1/0");
        for (String count : check.inputs().get("conductors").stringValue().split("-")) {
            Laying laying = Laying.usual(WiringMethod.IN_CONDUIT, Integer.parseInt(count))
                    .withTerminals(75);
            double share =
                    CODE.ampacity(wire, laying).value().si() / wire.ampacity(90).si();
            check.expect("percent", 100 * share);
        }
    }

    private static void nineConductors(Check check) {
        Laying laying = Laying.usual(WiringMethod.IN_CONDUIT, 9).withTerminals(75);
        check.expect(
                "ampacity_a",
                CODE.ampacity(CODE.conductor("12"), laying).value().si());
    }

    private static void ambient(Check check) {
        int ambient = (int) check.input("ambient_c");
        int rating = (int) check.input("rating_c");
        AmpacityFactor factor = TABLES.factors().stream()
                .filter(one -> one.family() == CodeFamily.NFPA_70
                        && one.kind() == AmpacityFactor.Kind.AMBIENT
                        && one.covers(ambient, rating))
                .findFirst()
                .orElseThrow();
        check.expect("factor", factor.factor().value());
    }

    private static void grounding(Check check) {
        Current breaker = new Current(check.input("device_a"));
        ConductorSpec thick = CODE.conductor("4/0");
        assertEquals(
                check.json().get("expected").get("copper_awg").stringValue(),
                CODE.groundingConductor(breaker, thick, thick).value().size(),
                check.toString());
        String aluminium = TABLES.grounding().stream()
                .filter(row -> row.upTo().compareTo(breaker) >= 0)
                .findFirst()
                .orElseThrow()
                .aluminium();
        assertEquals(check.json().get("expected").get("aluminum_awg").stringValue(), aluminium, check.toString());
    }

    /** The worked example ends at 8 AWG, which has 16,510 circular mils. */
    private static void enlargedGrounding(Check check) {
        Answer<ConductorSpec> answer =
                CODE.groundingConductor(new Current(60), CODE.conductor("6"), CODE.conductor("4"));
        assertEquals("8", answer.value().size());
        check.expect("required_cmil", answer.steps().get(1).value().si() / CIRCULAR_MIL_M2);
    }

    private static void cover(Check check) {
        Voltage voltage = new Voltage(120);
        Burial cable = new Burial(BuriedAs.CABLE, new Voltage(240), new Current(30), false);
        Burial protectedBranch = new Burial(BuriedAs.CABLE, voltage, new Current(20), true);
        Burial plastic = new Burial(BuriedAs.OTHER_CONDUIT, voltage, new Current(30), false);
        Burial control = new Burial(BuriedAs.CABLE, new Voltage(24), Current.ZERO, false);
        BuriedUnder ground = BuriedUnder.OPEN_GROUND;
        switch (rest(check, "el-cover-")) {
            case "direct" -> cover(check, ground, cable);
            case "rmc" -> cover(check, ground, new Burial(BuriedAs.RIGID_METAL, voltage, new Current(30), false));
            case "pvc" -> cover(check, ground, plastic);
            case "gfci" -> cover(check, ground, protectedBranch);
            case "lv" -> cover(check, ground, control);
            case "drive-direct" -> cover(check, BuriedUnder.DRIVEWAY, cable);
            case "drive-gfci" -> cover(check, BuriedUnder.DRIVEWAY, protectedBranch);
            case "street" ->
                List.of(cable, protectedBranch, plastic, control).forEach(one -> cover(check, BuriedUnder.STREET, one));
            case "slab-pvc" -> cover(check, BuriedUnder.SLAB, plastic);
            default -> throw new AssertionError(check);
        }
    }

    private static void cover(Check check, BuriedUnder under, Burial burial) {
        check.expect("cover_in", ((Length) CODE.cover(under, burial).limit()).inInches());
    }

    private static void boxRoom(Check check) {
        ConductorSpec wire = CODE.conductor(check.inputs().get("awg").stringValue());
        check.expect("volume_in3", wire.boxRoom().orElseThrow().si() / CUBIC_INCH_M3);
    }

    private static void singleGangBox(Check check) {
        BoxContents contents =
                new BoxContents(List.of(new WireGroup("12", (int) check.input("conductors"))), 2, 1, true);
        check.expect(
                "volume_in3", CODE.boxVolume(contents).orElseThrow().value().si() / CUBIC_INCH_M3);
    }

    /** Worked examples with a constant K in ohm circular mil per foot: the tree of one cable, with the resistance K/A. */
    private static void dropByConstant(Check check) {
        double ohmPerM = check.input("k_ohm_cmil_ft") / check.input("area_cmil") / Check.FOOT_M;
        double[] loopOhm = {0, 2 * ohmPerM * check.input("length_ft") * Check.FOOT_M};
        double[] currentA = new double[2];
        double[] dropV = new double[2];
        int[] parent = {-1, 0};
        CableTree.currents(parent, new double[] {0, check.input("current_a")}, currentA);
        CableTree.drops(parent, loopOhm, currentA, dropV);
        check.expect("drop_v", dropV[1]);
        check.expect("percent", 100 * dropV[1] / check.input("voltage_v"));
    }

    private static void drop(Check check) {
        ConductorSpec wire =
                CODE.conductor(matched("el-vd-t8-([0-9]+)-.*", check).group(1));
        Voltage drop = CODE.drop(new Current(check.input("current_a")), Length.feet(check.input("length_ft")), 2, wire)
                .value();
        check.expect("drop_v", drop.si());
        check.expect("percent", 100 * drop.si() / check.input("voltage_v"));
    }

    private static void valveWires(Check check) {
        boolean alike = check.inputs().has("ohm_per_kft");
        double valveOhmPerM = check.input(alike ? "ohm_per_kft" : "ohm_per_kft_hot") / THOUSAND_FEET_M;
        double commonOhmPerM = check.input(alike ? "ohm_per_kft" : "ohm_per_kft_common") / THOUSAND_FEET_M;
        double valveA = check.input(alike ? "current_a" : "current_hot_a");
        double commonA = check.input(alike ? "current_a" : "current_common_a");
        double longestM =
                ValveWires.longestM(check.input("allowed_drop_v"), valveA, valveOhmPerM, commonA, commonOhmPerM);
        check.expect("length_ft", longestM / Check.FOOT_M);
    }

    private static void millivolts(Check check) {
        ConductorSpec wire = Codes.IEC.conductor(rest(check, "el-mv90-"));
        Resistance loop =
                wire.column(90).flatMap(InsulationColumn::loopPerMetre).orElseThrow();
        double printed = check.json().get("expected").get("mv_per_a_m").doubleValue();
        assertEquals(printed, 1_000 * loop.ohms(), 1e-12, check.toString());
        double coldOhmPerKm = check.input("maximum_resistance_20c_ohm_per_km");
        assertEquals(coldOhmPerKm, 1_000 * wire.metal().perMetre().ohms(), 1e-12, check.toString());
        check.expect("mv_per_a_m", 2 * CopperWire.atCelsius(coldOhmPerKm, 20, 90));
    }

    private static void groundFault(Check check) {
        assertTrue(
                CODE.groundFault(Codes.outlet(), new Voltage(120), new Current(20))
                        .isPresent(),
                check.toString());
    }

    private static void dropLimit(Check check, DropSpan span) {
        check.expect("value", percent((Ratio) CODE.dropLimit(span, false).limit()));
    }

    private static void loadCurrent(Check check) {
        check.expect(
                "current_a",
                CODE.loadCurrent(new Power(check.input("power_w")), new Voltage(check.input("voltage_v")), 2)
                        .value()
                        .si());
    }

    private static double percent(Ratio ratio) {
        return Math.round(ratio.inPercent() * 1e9) / 1e9; // 0.53 is no whole number of hundredths in binary
    }

    private static Matcher matched(String pattern, Check check) {
        Matcher matcher = Pattern.compile(pattern).matcher(check.text("id"));
        assertTrue(matcher.matches(), check.toString());
        return matcher;
    }
}
