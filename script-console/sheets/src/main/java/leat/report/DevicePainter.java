package leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leat.draw.Box;
import leat.draw.Canvas;
import leat.draw.Lettering;
import leat.draw.LineWidth;
import leat.draw.Palette;
import leat.draw.Style;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.id.PipeId;
import leat.model.quantity.Length;
import leat.model.water.BackflowPreventer;
import leat.model.water.HoseBib;
import leat.model.water.Mains;
import leat.model.water.Manifold;
import leat.model.water.PipeRun;
import leat.model.water.Pump;
import leat.model.water.Source;
import leat.model.water.Tank;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;
import leat.model.water.ZoneValve;

/** Draws source, meter, backflow preventer, manifolds with their valves, and hose bibs. */
final class DevicePainter {

    private static final double METER_OFF_MM = 6;
    private static final Style FRAME = Style.line(LineWidth.W018, Palette.BLACK).withFill(Palette.WHITE);

    private final Board board;
    private final WaterSystem water;

    DevicePainter(Board board, WaterSystem water) {
        this.board = board;
        this.water = water;
    }

    void draw() {
        board.canvas().beginLayer("devices", "Source, meter, backflow preventer, manifolds and bibs");
        water.backflows().forEach(this::backflow);
        water.sources().forEach(this::source);
        water.manifolds().forEach(this::manifold);
        water.bibs().forEach(this::bib);
        board.canvas().endLayer();
    }

    /** Sources and manifolds alone, to find one's way by. */
    void drawPlaces() {
        board.canvas().beginLayer("devices", "Sources and manifolds");
        water.sources().forEach(this::source);
        water.manifolds().forEach(this::place);
        board.canvas().endLayer();
    }

    private void place(Manifold manifold) {
        double x = board.x(manifold.at());
        double y = board.y(manifold.at());
        board.canvas().beginItem(manifold.id() + ": manifold of zone valves", "");
        Symbols.manifold(board.canvas(), x, y);
        board.canvas().endItem();
        board.legend()
                .add("84", "manifold of zone valves", (c, box) -> Symbols.manifold(c, box.centreX(), box.centreY()));
        take(x, y);
        name("manifold " + manifold.id(), manifold.id().name(), x, y);
    }

    private void source(Source source) {
        Canvas canvas = board.canvas();
        double x = board.x(source.at());
        double y = board.y(source.at());
        WaterStyle style = WaterStyle.of(source.water());
        canvas.beginItem(
                source.id() + ": " + kind(source) + ", " + style.label() + ", static pressure "
                        + board.show(source.staticPressure()),
                "");
        source(canvas, source, x, y, style);
        canvas.endItem();
        board.legend()
                .add(
                        "80-" + kind(source),
                        kind(source),
                        (c, box) -> source(c, source, box.centreX(), box.centreY(), style));
        take(x, y);
        name("source " + source.id(), source.id().name(), x, y);
        source.meter().ifPresent(meter -> meter(source, meter));
    }

    private static String kind(Source source) {
        if (source instanceof Mains) {
            return "public mains";
        }
        if (source instanceof Pump) {
            return "pump";
        }
        if (source instanceof Tank) {
            return "tank";
        }
        throw new AssertionError(source);
    }

    private static void source(Canvas canvas, Source source, double x, double y, WaterStyle style) {
        if (source instanceof Mains) {
            Symbols.mains(canvas, x, y, style.colour());
        } else if (source instanceof Pump) {
            Symbols.pump(canvas, x, y, style.colour());
        } else {
            Symbols.tank(canvas, x, y, style.colour());
        }
    }

    /** The meter sits on the first run behind the outlet, far enough for its symbol. */
    private void meter(Source source, String meter) {
        Optional<PipeRun> first = water.main().runs().stream()
                .filter(run -> run.from().equals(source.id()))
                .findFirst();
        Point at = first.map(run -> along(run.route(), METER_OFF_MM)).orElse(source.at());
        double x = board.x(at);
        double y = board.y(at);
        board.canvas().beginItem(source.id() + ": meter " + meter, "Drawn beside the source, not to scale.");
        Symbols.meter(board.canvas(), x, y);
        board.canvas().endItem();
        board.legend().add("82", "water meter", (c, box) -> Symbols.meter(c, box.centreX(), box.centreY()));
        take(x, y);
    }

    /** As far along the route as the sheet needs for a symbol, but never beyond its middle. */
    private Point along(Polyline route, double mm) {
        double metres = Math.min(mm * board.view().scale().ratio() / 1000, route.lengthM() / 2);
        return route.at(new Length(metres));
    }

    private void backflow(BackflowPreventer backflow) {
        Optional<PipeRun> run = water.pipe(backflow.on());
        if (run.isEmpty()) {
            return;
        }
        boolean behindMeter = water.sources().stream()
                .anyMatch(source ->
                        run.get().from().equals(source.id()) && source.meter().isPresent());
        Point at = behindMeter
                ? along(run.get().route(), 2 * METER_OFF_MM)
                : along(run.get().route(), 3);
        Point ahead = along(run.get().route(), behindMeter ? 2 * METER_OFF_MM + 1 : 4);
        double x = board.x(at);
        double y = board.y(at);
        double downstream = at.bearingTo(ahead).degrees();
        board.canvas()
                .beginItem(
                        backflow.id() + ": backflow preventer " + backflow.device() + ", "
                                + Words.small(backflow.height(), board.units()) + " above grade",
                        "All behind it is irrigation water.");
        Symbols.backflow(board.canvas(), x, y, downstream);
        board.canvas().endItem();
        board.legend()
                .add(
                        "83",
                        "backflow preventer, pointing downstream",
                        (c, box) -> Symbols.backflow(c, box.centreX(), box.centreY(), 90));
        take(x, y);
        name("backflow " + backflow.id(), backflow.id().name(), x, y);
    }

    private void manifold(Manifold manifold) {
        double x = board.x(manifold.at());
        double y = board.y(manifold.at());
        List<String> lines = new ArrayList<>();
        lines.add(manifold.id().name());
        manifold.valves().stream().filter(valve -> !valve.spare()).forEach(valve -> lines.add(valve(valve)));
        manifold.valves().stream().filter(ZoneValve::spare).forEach(valve -> lines.add(valve(valve)));
        board.canvas().beginItem("manifold " + String.join("\n", lines), "");
        Symbols.manifold(board.canvas(), x, y);
        board.canvas().endItem();
        board.legend()
                .add(
                        "84",
                        "manifold of zone valves; its valves are listed beside it",
                        (c, box) -> Symbols.manifold(c, box.centreX(), box.centreY()));
        take(x, y);
        board.callouts()
                .addFramed(
                        "devices",
                        "manifold " + manifold.id(),
                        lines,
                        x,
                        y,
                        5,
                        Callouts.DEVICES,
                        Lettering.small(),
                        FRAME);
    }

    private String valve(ZoneValve valve) {
        if (valve.spare()) {
            return valve.id() + ": spare";
        }
        Optional<Zone> zone = water.zones().stream()
                .filter(one -> one.valve().equals(valve.id()))
                .findFirst();
        return valve.id() + ": " + zone.map(one -> Words.named(one.id())).orElse("no zone yet");
    }

    private void bib(HoseBib bib) {
        double x = board.x(bib.at());
        double y = board.y(bib.at());
        Optional<PipeId> on = bib.on();
        WaterStyle style = on.map(pipe -> WaterStyle.of(water.waterIn(pipe))).orElse(WaterStyle.DRINKING);
        String supply = on.map(pipe -> style.label() + " from " + pipe).orElse("without supply yet");
        board.canvas()
                .beginItem(
                        bib.id() + ": hose bib, " + board.show(bib.drawn()) + ", " + supply
                                + (bib.vacuumBreaker() ? ", with vacuum breaker" : ", no vacuum breaker")
                                + PhaseStyle.of(bib.phase()).words()
                                + board.computed(bib.id()),
                        "");
        PhaseStyle phase = PhaseStyle.of(bib.phase());
        Symbols.bib(board.canvas(), x, y, style.colour(), phase);
        phase.explain(board.legend());
        board.canvas().endItem();
        board.legend()
                .add(
                        "85-" + style.ordinal(),
                        "hose bib, " + style.label(),
                        (c, box) -> Symbols.bib(c, box.centreX(), box.centreY() + 0.8, style.colour(), PhaseStyle.NOW));
        take(x, y);
        name("bib " + bib.id(), bib.id().name() + " (" + style.letter() + ")", x, y);
    }

    private void take(double x, double y) {
        board.callouts().take(Box.around(x, y, Symbols.DEVICE_MM, Symbols.DEVICE_MM));
    }

    private void name(String key, String text, double x, double y) {
        board.callouts()
                .add(
                        "devices",
                        key,
                        List.of(text),
                        x,
                        y,
                        Symbols.DEVICE_MM + 0.6,
                        Callouts.DEVICES,
                        Lettering.small().inBold());
    }
}
