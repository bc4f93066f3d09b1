package leat.calc.hydraulics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import leat.calc.internal.pipes.PipeLaw;
import leat.model.catalog.HeadFamily;
import leat.model.fault.UnfinishedException;
import leat.model.finding.Citation;
import leat.model.finding.Ledger;
import leat.model.finding.Standing;
import leat.model.finding.Step;
import leat.model.finding.Subject;
import leat.model.id.BibId;
import leat.model.id.HeadId;
import leat.model.plan.Site;
import leat.model.quantity.Length;
import leat.model.quantity.Pressure;
import leat.model.quantity.Quantity;
import leat.model.quantity.Ratio;
import leat.model.water.Head;
import leat.model.water.Pump;
import leat.model.water.Source;

/** Writes the ledger of a place: the pressure at the source, each loss on the way, the rise, and what is left. */
final class Explanation {

    private static final Citation SUM = new Citation("sum of the lines above", Standing.RECOMPUTED);

    private static final Citation STATED = new Citation("the yard", Standing.STATED);

    private final Site site;
    private final WaterPath path;
    private final WaterFormulas formulas;

    Explanation(Site site, WaterPath path) {
        this.site = site;
        this.path = path;
        formulas = new WaterFormulas(site.yard().units());
        if (!path.solve(Pressure.ZERO)) {
            throw new UnfinishedException(List.of("no pressures were found at which all parts of the path agree"));
        }
    }

    Ledger head(HeadId id, String figure) {
        Integer place = path.heads().get(id);
        if (place == null) {
            throw new AssertionError(id);
        }
        List<Step> steps = toPressure(place);
        if (figure.equals("flow")) {
            steps.add(flow(id, place));
        }
        return new Ledger(Subject.of(id), figure, steps);
    }

    Ledger bib(BibId id, String figure) {
        if (figure.equals("flow")) {
            Step stated = new Step(
                    "flow that the bib is planned for", "as stated", List.of(), path.flow(path.last()), STATED);
            return new Ledger(Subject.of(id), figure, List.of(stated));
        }
        return new Ledger(Subject.of(id), figure, toPressure(path.last()));
    }

    private List<Step> toPressure(int place) {
        List<Integer> way = new ArrayList<>();
        for (int here = place; here > 0; here = path.link(here).parent()) {
            way.add(here);
        }
        Collections.reverse(way);
        List<Step> steps = new ArrayList<>();
        steps.add(atRest(path.source()));
        way.stream().filter(here -> isWorthALine(path.link(here))).forEach(here -> steps.add(loss(here)));
        steps.add(rise(place));
        steps.add(new Step("pressure that is left", "sum of the lines above", List.of(), path.pressure(place), SUM));
        return steps;
    }

    private Step atRest(Source source) {
        String text = "pressure at source " + source.id().name() + " at rest";
        if (source instanceof Pump pump && pump.lift().metres() != 0) {
            List<Step.Input> inputs = List.of(input("shut-off", pump.shutOff()), input("lift", pump.lift()));
            return new Step(
                    text, "shut-off - " + formulas.weight() + " · lift", inputs, source.staticPressure(), STATED);
        }
        return new Step(text, "as stated", List.of(), source.staticPressure(), STATED);
    }

    private static boolean isWorthALine(Link link) {
        return link.friction() > 0 || link.minor() > 0 || link.isDevice();
    }

    Step loss(int place) {
        Link link = path.link(place);
        List<Step.Input> inputs = new ArrayList<>();
        inputs.add(new Step.Input("Q", path.flow(place)));
        if (link.boreM() > 0) {
            inputs.add(new Step.Input("d", new Length(link.boreM())));
            inputs.add(new Step.Input("K", Ratio.of(lossFactor(link))));
        }
        if (link.lengthM() > 0) {
            inputs.add(new Step.Input("L", new Length(link.lengthM())));
            inputs.add(new Step.Input("C", Ratio.of(hazenWilliamsC(link))));
        }
        if (isDeviceAlone(link)) {
            addLaw(link, inputs);
        }
        if (link.kind() == Link.Kind.SOURCE) {
            inputs.addAll(SourceLaw.inputs(path.source()));
        }
        return new Step(text(link), formula(link), inputs, path.loss(place).times(-1), link.citation());
    }

    private static boolean isDeviceAlone(Link link) {
        return switch (link.kind()) {
            case METER, BACKFLOW, FITTED, VALVE -> true;
            case SOURCE, PIPE, HEAD -> false;
        };
    }

    /** The device's law in the units of the yard. */
    private void addLaw(Link link, List<Step.Input> inputs) {
        double pascalsPerUnit = link.deviceK() * PipeLaw.PASCALS_PER_M;
        inputs.add(new Step.Input("p0", new Pressure(link.thresholdM() * PipeLaw.PASCALS_PER_M)));
        inputs.add(new Step.Input(
                "k" + formulas.unitOfDeviceLaw(), formulas.deviceFactor(pascalsPerUnit, link.deviceN())));
        inputs.add(new Step.Input("n", Ratio.of(link.deviceN())));
    }

    private static String text(Link link) {
        String of = link.of() == null ? "" : link.of().title();
        return switch (link.kind()) {
            case SOURCE -> "fall at " + of + " while the water is drawn";
            case METER -> "meter of " + of;
            case BACKFLOW -> of;
            case FITTED -> "device at the inlet of " + of;
            case PIPE -> "friction and fittings in " + of;
            case VALVE -> "zone valve " + (link.of() == null ? "" : link.of().name());
            case HEAD -> "swing joint of " + of;
        };
    }

    private String formula(Link link) {
        return switch (link.kind()) {
            case SOURCE -> SourceLaw.formula(path.source());
            case METER, BACKFLOW, FITTED, VALVE -> "p0 + k · Q^n";
            case PIPE -> formulas.friction() + " + " + formulas.minor();
            case HEAD -> formulas.minor();
        };
    }

    /** Taken back from the coefficients that the solver has, so that the line shows what was computed with. */
    private static double lossFactor(Link link) {
        return link.minor() / PipeLaw.minorCoefficient(1, link.boreM());
    }

    private static double hazenWilliamsC(Link link) {
        double atOne = PipeLaw.frictionCoefficient(link.lengthM(), link.boreM(), 1);
        double c = StrictMath.pow(atOne / link.friction(), 1 / 1.852);
        return Math.rint(c * 1e6) / 1e6;
    }

    private Step rise(int place) {
        double riseM = path.link(place).elevationM() - path.sourceElevationM();
        return new Step(
                "rise from the source",
                formulas.rise(),
                List.of(new Step.Input("height", new Length(riseM))),
                new Pressure(-riseM * PipeLaw.PASCALS_PER_M),
                new Citation("weight of water at 15 °C", Standing.PUBLISHED));
    }

    Step flow(HeadId id, int place) {
        Head head = site.yard().water().head(id).orElseThrow();
        HeadFamily family = site.catalog().head(head.family());
        List<Step.Input> inputs = List.of(
                input("p", path.pressure(place)),
                input("reference pressure", family.pressure().reference()),
                input("reference flow", family.referenceFlow(head)),
                input("x", Ratio.of(family.jet().flowExponent())));
        return new Step(
                "drawn by head " + id.name() + ", family " + family.key(),
                "reference flow · (p / reference pressure)^x",
                inputs,
                path.outletFlow(place),
                family.citation());
    }

    private static Step.Input input(String name, Quantity value) {
        return new Step.Input(name, value);
    }
}
