package leat.calc.workplan;

/**
 * What a step does. The order here is that in which steps are taken that do not wait for each other: it is common practice,
 * no source; what must come first is in the graph.
 */
public enum WorkKind {
    PERMIT("ask which permits and inspections the work needs, and get them", Worker.ANYONE),
    STAKE("drive the stakes, check each with its third tape, and mark the trenches in white", Worker.ANYONE),
    NOTICE("ask for lines in the ground to be marked; private ones behind the meter as well", Worker.LINE_OWNERS),
    FIND("dig the lines free by hand where trenches come near", Worker.ANYONE),
    OPEN("cut and lift paving where trenches cross it", Worker.ANYONE),
    DIG_BY_HAND("dig by hand", Worker.ANYONE),
    DIG_MAIN("dig trenches for the main and for power", Worker.ANYONE),
    DIG("dig the other trenches", Worker.ANYONE),
    SUPPORT("have the sides held before anyone goes in", Worker.TRAINED),
    BED("spread the bed", Worker.ANYONE),
    LAY_POWER("lay conduits and cables with power", Worker.ANYONE),
    INSPECT("have it looked at before it is covered", Worker.INSPECTOR),
    LAY_MAIN("lay the main", Worker.ANYONE),
    VALVES("build the manifold and shut its valves", Worker.ANYONE),
    BACKFLOW("set the backflow preventer", Worker.LICENSED),
    TIE_IN("join it to what is there; water off at the source first", Worker.LICENSED),
    TEST_MAIN("fill slowly, let the air out, hold under pressure, look at each joint while it is open", Worker.ANYONE),
    TEST_BACKFLOW("have the backflow preventer tested", Worker.LICENSED),
    LAY_LATERAL("lay the laterals", Worker.ANYONE),
    LAY_CONTROL("lay the valve wires, slack at each turn", Worker.ANYONE),
    COVER("tamp earth over the lower layer, up to the next", Worker.ANYONE),
    FLUSH("flush the laterals with their ends open until the water is clear", Worker.ANYONE),
    END("cap, box and tag what ends early", Worker.ANYONE),
    RECORD("photograph and measure from two marks what lies open", Worker.ANYONE),
    BACKFILL("fill in layers and tamp; warning tape above power", Worker.ANYONE),
    RESTORE("make good paving, beds and lawn", Worker.ANYONE),
    PULL("pull the conductors through their conduits", Worker.ANYONE),
    HEADS("set the heads at finished grade", Worker.ANYONE),
    CONNECT_VALVES("join the valve wires, splices watertight", Worker.ANYONE),
    CONNECT_POWER("connect and try out the circuit, dead until then", Worker.LICENSED),
    TUNE("run the zone, set arcs and radii", Worker.ANYONE),
    LABEL("label valves, stations, breakers and ends; keep photographs and measures with the plan", Worker.ANYONE);

    private final String label;
    private final Worker worker;

    WorkKind(String label, Worker worker) {
        this.label = label;
        this.worker = worker;
    }

    public String label() {
        return label;
    }

    public Worker worker() {
        return worker;
    }

    /** Whether somebody else must do it or see it. */
    public boolean isForOthers() {
        return worker != Worker.ANYONE;
    }
}
