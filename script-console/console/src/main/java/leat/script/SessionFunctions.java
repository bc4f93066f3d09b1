package leat.script;

import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import leat.calc.Progress;
import leat.calc.Proposal;
import leat.calc.assess.Assessment;
import leat.calc.assess.Assessor;
import leat.calc.assess.Planner;
import leat.calc.assess.PlannerParameters;
import leat.document.ClimateTable;
import leat.document.StandingData;
import leat.document.YardDocument;
import leat.model.catalog.PriceBook;
import leat.model.plan.Outline;
import leat.model.plan.Part;
import leat.model.plan.Parts;
import leat.model.plan.Path;
import leat.model.plan.Place;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.water.Climate;
import org.graalvm.polyglot.Value;
import org.graalvm.polyglot.proxy.ProxyExecutable;

/**
 * The functions that need to know which script is running: its settings, its folder, where its output goes. The
 * public methods are what a script can call.
 */
public final class SessionFunctions {

    private final Settings settings;
    private final ScriptFolder folder;
    private final ScriptHost host;
    private final Progress progress;
    private final UnitsSeen units;
    private final Help help;
    private final Results results = new Results();

    SessionFunctions(
            Settings settings, ScriptFolder folder, ScriptHost host, Progress progress, UnitsSeen units, Help help) {
        this.help = help;
        this.units = units;
        this.settings = settings;
        this.folder = folder;
        this.host = host;
        this.progress = progress;
    }

    SortedMap<String, Object> bindings(Views views) {
        SortedMap<String, Object> bindings = new TreeMap<>();
        Surface.own(SessionFunctions.class)
                .forEach((name, operation) -> bindings.put(name, new MethodView(operation, this, views)));
        // A script's own values, such as objects, are printed in the script's form, which Java does not know.
        bindings.put("print", (ProxyExecutable) values -> {
            host.print(Arrays.stream(values).map(views::text).collect(Collectors.joining(" ")));
            return views.nothing();
        });
        bindings.put("help", (ProxyExecutable) values -> {
            host.print(values.length == 0 ? help.topics() : explained(values[0]));
            return views.nothing();
        });
        return bindings;
    }

    /** A function or a type of Leat that is given itself is meant as its word. */
    private String explained(Value value) {
        Object proxy = value.isProxyObject() ? value.asProxyObject() : value;
        if (proxy instanceof MethodView method) {
            return help.of(method.name());
        }
        if (proxy instanceof TypeView type) {
            return help.of(type.toString());
        }
        if (proxy instanceof HostValue view) {
            return help.ofValue(view.host());
        }
        return value.isString() ? help.of(value.asString()) : help.topics();
    }

    ScriptOutcome outcome() {
        return results.outcome();
    }

    /** The files of reports made so far; the next reports begin anew. */
    SortedMap<String, byte[]> takeFiles() {
        return results.takeFiles();
    }

    /** The yard with all that is not given planned: heads, zones, trenches, pipes, sizes. */
    public Yard plan(Yard yard) {
        return plan(yard, PlannerParameters.defaults());
    }

    /** The same with choices of the designer, such as {@code heads("spray-3_7")}. */
    public Yard plan(Yard yard, PlannerParameters choices) {
        Proposal proposal = Planner.run(site(yard), choices, progress);
        proposal.reasons().forEach(reason -> host.note(reason.subject() + ": " + reason.text()));
        results.planned(proposal.yard());
        return proposal.yard();
    }

    /**
     * The choice of the planner's heads: keys of families in the catalogue, the best first, such as
     * {@code heads("spray-3_7", "multi-7_6")}.
     */
    public PlannerParameters heads(String... families) {
        PlannerParameters usual = PlannerParameters.defaults();
        return usual.withPlacement(usual.placement().withFamilies(List.of(families)));
    }

    /** Every result and finding of a yard as it stands. */
    public Assessment assess(Yard yard) {
        Assessment assessment = Assessor.run(site(yard), progress);
        results.assessed(assessment);
        return assessment;
    }

    /** Puts drawings, tables and findings into the output folder when the script has run to its end. */
    public void report(Yard yard) {
        report(yard, "");
    }

    /** The same in a folder of its own within the output folder, for one of several yards. */
    public void report(Yard yard, String folder) {
        if (!folder.matches("|[\\p{L}\\p{N}][\\p{L}\\p{N} _-]*")) {
            throw new ScriptMistake(
                    "the folder of a report must be letters, digits, spaces, - and _; it is \"" + folder + "\"",
                    "report");
        }
        results.reported(folder, results.known(yard).orElseGet(() -> assess(yard)));
    }

    /** What {@code --set name=value} states, read as the same kind of thing as {@code otherwise}, else that. */
    @SuppressWarnings("unchecked") // the settings give the kind of thing that they are given
    public <T> T param(String name, T otherwise) {
        return (T) settings.get(name, otherwise);
    }

    /** Shows values as text on one line; lists with a line for each element. */
    public void print(Object... values) {
        host.print(Arrays.stream(values)
                .map(value -> value == null ? "none" : PlainText.text(value, units.last()))
                .collect(Collectors.joining(" ")));
    }

    /** The text of a file in the script's folder. */
    public String readText(String file) {
        return folder.read(file);
    }

    /** The shape whose corners stand under that name in a table of points; see {@link PointTable}. */
    public Outline region(String file, String name) {
        return Parts.polygon(points(file, name));
    }

    /** The route whose points stand under that name in a table of points. */
    public Path route(String file, String name) {
        return Parts.polyline(points(file, name));
    }

    /** Heights of the ground as it is, from a table of points. */
    public Part levels(String file) {
        return new PointTable(file, folder.read(file)).levels(false);
    }

    /** Heights of the ground as it will be, from a table of points. */
    public Part finishedLevels(String file) {
        return new PointTable(file, folder.read(file)).levels(true);
    }

    /** Prices of materials, for {@code budget().prices(...)}; see {@link PriceTable}. */
    public PriceBook prices(String file) {
        return PriceTable.read(file, folder.read(file));
    }

    /** The climate of a place from a table of its months; see {@link ClimateTable}. */
    public Climate climate(String file) {
        return ClimateTable.read(folder.read(file), file);
    }

    /** The yard of a document in the script's folder, such as {@code front.yard.json}. */
    public Yard readYard(String file) {
        return YardDocument.read(folder.read(file), file);
    }

    /** The yard on the standing tables of its edition: what calculations are given. */
    public Site site(Yard yard) {
        units.see(yard);
        return StandingData.load(yard.edition()).siteOf(yard);
    }

    /** Lists all words by topic. */
    public void help() {
        host.print(help.topics());
    }

    /** Explains a word, such as {@code help("rotor")}; or what can be done with a value. */
    public void help(Object wordOrValue) {
        host.print(wordOrValue instanceof String word ? help.of(word) : help.ofValue(wordOrValue));
    }

    private Place[] points(String file, String name) {
        return new PointTable(file, folder.read(file)).points(name).toArray(Place[]::new);
    }
}
