package leat.report;

import java.util.ArrayList;
import java.util.List;
import leat.draw.Box;
import leat.draw.Canvas;
import leat.draw.Legend;
import leat.draw.Lettering;
import leat.model.geometry.Point;
import leat.model.power.Ahead;
import leat.model.power.Controller;
import leat.model.power.LightSwitch;
import leat.model.power.Load;
import leat.model.power.Luminaire;
import leat.model.power.Outlet;
import leat.model.power.Panel;
import leat.model.power.PowerSystem;
import leat.model.power.StructureFeed;
import leat.model.power.Transformer;
import leat.model.site.Phase;
import leat.model.water.Manifold;

/** Draws panels, outlets, luminaires, switches, structure feeds, controllers, and the manifolds that wires go to. */
final class PowerPainter {

    private static final String LAYER = "power";

    private final Board board;
    private final PowerSystem power;

    PowerPainter(Board board, PowerSystem power) {
        this.board = board;
        this.power = power;
    }

    void draw(List<Manifold> manifolds) {
        board.canvas().beginLayer(LAYER, "Panels, outlets, lights, switches, feeds, controllers");
        manifolds.forEach(this::manifold);
        power.switches().forEach(this::lightSwitch);
        power.loads().forEach(this::load);
        power.panels().forEach(this::panel);
        board.canvas().endLayer();
    }

    private void panel(Panel panel) {
        PhaseStyle phase = PhaseStyle.of(panel.existing(), panel.phase());
        String title = panel.id() + ": panel, " + board.show(panel.voltage()) + ", main breaker "
                + board.show(panel.rating()) + phase.words();
        Legend.Sample sample = (c, box) -> PowerSymbols.panel(c, box.centreX(), box.centreY(), PhaseStyle.NOW);
        thing(panel.at(), title, "70", "panel", sample, phase, (c, x, y) -> PowerSymbols.panel(c, x, y, phase));
        name("panel " + panel.id(), List.of(panel.id().name()), panel.at());
    }

    private void lightSwitch(LightSwitch one) {
        PhaseStyle phase = PhaseStyle.of(one.phase());
        Legend.Sample sample =
                (c, box) -> PowerSymbols.lightSwitch(c, box.centreX(), box.centreY() + 1, PhaseStyle.NOW);
        thing(
                one.at(),
                one.id() + ": switch" + phase.words(),
                "74",
                "switch",
                sample,
                phase,
                (c, x, y) -> PowerSymbols.lightSwitch(c, x, y, phase));
    }

    private void load(Load load) {
        PhaseStyle phase = PhaseStyle.of(load.phase());
        thing(
                load.at(),
                title(load, phase),
                "72-" + order(load),
                legend(load),
                (c, box) -> symbol(c, load, box.centreX(), box.centreY(), PhaseStyle.NOW),
                phase,
                (c, x, y) -> symbol(c, load, x, y, phase));
        name(load.id().kind() + " " + load.id(), label(load), load.at());
        if (load.phase() == Phase.LATER && load.ahead() != Ahead.NOTHING) {
            earlyEnd(load);
        }
    }

    private void earlyEnd(Load load) {
        double x = board.x(load.at());
        double y = board.y(load.at());
        String what = load.ahead() == Ahead.CONDUIT
                ? "empty conduit with a pull string, capped and tagged"
                : "conductors insulated one by one, in a box, tagged, not connected at the panel";
        board.canvas().beginItem("end of what is laid now for " + Words.named(load.id()) + ": " + what, "");
        PowerSymbols.earlyEnd(board.canvas(), x, y);
        board.canvas().endItem();
        board.callouts().take(new Box(x - 1.5, y + 1.2, x + 5.4, y + 4));
        board.legend()
                .add(
                        "78",
                        "end laid for later: closed, boxed, tagged",
                        (c, box) -> PowerSymbols.earlyEnd(c, box.centreX() - 2, box.centreY() - 2.6));
    }

    private String title(Load load, PhaseStyle phase) {
        return load.id() + ": " + load.id().kind() + ", " + board.show(load.power())
                + (load.isWired()
                        ? load.circuit().map(one -> ", circuit " + one).orElse(", on no circuit yet")
                        : ", plugged in")
                + phase.words()
                + board.computed(load.id());
    }

    /** A light needs no name of its own where its circuit tells enough; the schedule has it. */
    private static List<String> label(Load load) {
        List<String> lines = new ArrayList<>();
        lines.add(load.id().name());
        load.circuit().ifPresent(circuit -> lines.add("(" + circuit + ")"));
        return List.of(String.join(" ", lines));
    }

    private static int order(Load load) {
        return load instanceof Outlet outlet
                ? outlet.groundFault() ? 1 : 0
                : load instanceof Luminaire
                        ? 2
                        : load instanceof StructureFeed ? 3 : load instanceof Controller ? 4 : 5;
    }

    private static String legend(Load load) {
        if (load instanceof Outlet outlet) {
            return outlet.groundFault() ? "outlet with ground-fault protection" : "outlet";
        }
        if (load instanceof Luminaire) {
            return "luminaire";
        }
        if (load instanceof Transformer) {
            return "transformer for low voltage";
        }
        return load instanceof StructureFeed ? "feed of a structure" : "controller of the zone valves";
    }

    private static void symbol(Canvas canvas, Load load, double x, double y, PhaseStyle phase) {
        if (load instanceof Outlet outlet) {
            PowerSymbols.outlet(canvas, x, y, phase, outlet.groundFault());
        } else if (load instanceof Luminaire) {
            PowerSymbols.luminaire(canvas, x, y, phase);
        } else if (load instanceof StructureFeed) {
            PowerSymbols.feed(canvas, x, y, phase, WireStyle.POWER.colour());
        } else if (load instanceof Controller) {
            PowerSymbols.controller(canvas, x, y, phase);
        } else if (load instanceof Transformer) {
            PowerSymbols.transformer(canvas, x, y, phase);
        } else {
            throw new AssertionError(load);
        }
    }

    private void manifold(Manifold manifold) {
        Legend.Sample sample = (c, box) -> Symbols.manifold(c, box.centreX(), box.centreY());
        thing(
                manifold.at(),
                manifold.id() + ": manifold of zone valves",
                "76",
                "manifold of zone valves",
                sample,
                PhaseStyle.NOW,
                Symbols::manifold);
        name("manifold " + manifold.id(), List.of(manifold.id().name()), manifold.at());
    }

    private interface Symbol {
        void draw(Canvas canvas, double x, double y);
    }

    private void thing(
            Point at, String title, String key, String legend, Legend.Sample sample, PhaseStyle phase, Symbol symbol) {
        double x = board.x(at);
        double y = board.y(at);
        board.canvas().beginItem(title, "");
        symbol.draw(board.canvas(), x, y);
        board.canvas().endItem();
        board.callouts().take(Box.around(x, y, PowerSymbols.HALF_MM, PowerSymbols.HALF_MM));
        phase.explain(board.legend());
        board.legend().add(key, legend, sample);
    }

    private void name(String key, List<String> lines, Point at) {
        board.callouts()
                .add(
                        LAYER,
                        key,
                        lines,
                        board.x(at),
                        board.y(at),
                        PowerSymbols.HALF_MM + 0.5,
                        Callouts.DEVICES,
                        Lettering.small());
    }
}
