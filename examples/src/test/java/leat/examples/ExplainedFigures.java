package leat.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Month;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import leat.calc.assess.Assessment;
import leat.calc.budget.BudgetLine;
import leat.calc.budget.BudgetSum;
import leat.calc.digging.DigTotals;
import leat.calc.digging.TrenchDig;
import leat.calc.schedule.ZoneMonth;
import leat.calc.schedule.ZoneSchedule;
import leat.calc.staking.Stake;
import leat.calc.takeoff.MaterialLine;
import leat.calc.wiring.CableFigures;
import leat.calc.wiring.CircuitFigures;
import leat.calc.wiring.LoadFigures;
import leat.model.catalog.ConductorSpec;
import leat.model.finding.Ledger;
import leat.model.finding.Step;
import leat.model.id.Id;
import leat.model.id.ZoneId;
import leat.model.quantity.Cost;
import leat.model.quantity.Count;
import leat.model.quantity.Figure;
import leat.model.site.Phase;
import leat.model.water.ClimateMonth;
import org.joda.money.Money;

/** Asks an assessment to explain each figure that it has, and holds the last line against the figure. */
final class ExplainedFigures {

    private final Assessment assessment;
    private final SortedSet<String> asked = new TreeSet<>();

    private ExplainedFigures(Assessment assessment) {
        this.assessment = assessment;
    }

    /** @return how many ledgers were read */
    static int check(Assessment assessment) {
        var figures = new ExplainedFigures(assessment);
        figures.water();
        figures.surfaces();
        figures.trenches();
        figures.power();
        figures.stakes();
        figures.watering();
        figures.materials();
        figures.budget();
        figures.nothingIsLeftOut();
        return figures.asked.size();
    }

    private void same(Id id, String figure, Figure expected) {
        Ledger ledger = assessment.why(id, figure);
        asked.add(id.kind() + ": " + id.name() + ": " + figure);
        check(id.kind() + " " + id.name() + ", " + figure, ledger, expected);
    }

    private void same(String name, String figure, Figure expected) {
        Ledger ledger = assessment.why(name, figure);
        asked.add(name + ": " + figure);
        check(name + ", " + figure, ledger, expected);
    }

    private static void check(String what, Ledger ledger, Figure expected) {
        assertEquals(expected, ledger.value(), what);
        for (Step step : ledger.steps()) {
            assertFalse(step.text().isBlank(), what);
            assertFalse(step.formula().isBlank(), what);
            assertFalse(step.citation().text().isBlank(), what);
        }
    }

    private void water() {
        assessment.hydraulics().zones().forEach((zone, run) -> {
            same(zone, "flow", run.flow());
            run.heads().forEach((head, got) -> {
                same(head, "pressure", got.pressure());
                same(head, "flow", got.flow());
            });
        });
        assessment.yard().water().bibs().forEach(bib -> {
            same(
                    bib.id(),
                    "pressure",
                    assessment.hydraulics().bibs().get(bib.id()).pressure());
            same(bib.id(), "flow", bib.drawn());
        });
        assessment
                .yard()
                .water()
                .pipes()
                .forEach(pipe -> assessment.hydraulics().pipe(pipe.id()).ifPresent(load -> {
                    same(pipe.id(), "flow", load.flow());
                    same(pipe.id(), "velocity", load.velocity());
                    same(pipe.id(), "loss", load.loss());
                }));
    }

    private void surfaces() {
        assessment.coverage().surfaces().forEach((surface, coverage) -> {
            same(surface, "reached", coverage.reachedAsWanted());
            same(surface, "rate", coverage.mean());
            same(surface, "low quarter", coverage.lowQuarter());
            same(surface, "christiansen", coverage.christiansen());
        });
    }

    private void trenches() {
        for (TrenchDig dig : assessment.digging().trenches().values()) {
            same(dig.id(), "length", dig.onGround());
            same(dig.id(), "width", dig.width());
            same(dig.id(), "depth", dig.depth());
            same(dig.id(), "volume", dig.bank());
            same(dig.id(), "loose", dig.loose());
            same(dig.id(), "bedding", dig.bedding());
            same(dig.id(), "backfill", dig.backfill());
            dig.laid().stream()
                    .filter(one -> dig.laid().stream()
                            .filter(other -> other.id().name().equals(one.id().name()))
                            .findFirst()
                            .orElseThrow()
                            .equals(one))
                    .forEach(one -> same(dig.id(), "cover " + one.id().name(), one.cover()));
        }
        totals("", assessment.digging().total());
        assessment.digging().byPhase().forEach((phase, totals) -> totals(" " + word(phase), totals));
        same("digging", "saved length", assessment.digging().saving().ofLength());
        same("digging", "saved volume", assessment.digging().saving().ofVolume());
    }

    private static String word(Phase phase) {
        return phase == Phase.NOW ? "now" : "later";
    }

    private void totals(String when, DigTotals totals) {
        same("digging", "length" + when, totals.onGround());
        same("digging", "by hand" + when, totals.byHand());
        same("digging", "volume" + when, totals.bank());
        same("digging", "loose" + when, totals.loose());
        same("digging", "bedding" + when, totals.bedding());
        same("digging", "backfill" + when, totals.backfill());
        same("digging", "left over" + when, totals.leftOver());
        same("digging", "loads" + when, totals.loads());
    }

    private void power() {
        for (CircuitFigures circuit : assessment.wiring().circuits()) {
            same(circuit.id(), "load", circuit.load());
            same(circuit.id(), "current", circuit.current());
            same(circuit.id(), "reckoned", circuit.reckoned());
            circuit.ampacity().ifPresent(most -> same(circuit.id(), "ampacity", most));
            assessment.wiring().loads().stream()
                    .filter(load -> load.circuit().equals(circuit.id()))
                    .flatMap(load -> load.drop().stream())
                    .max(Comparator.naturalOrder())
                    .ifPresent(drop -> same(circuit.id(), "drop", drop));
        }
        for (LoadFigures load : assessment.wiring().loads()) {
            same(load.id(), "current", load.current());
            load.drop().ifPresent(drop -> same(load.id(), "drop", drop));
            load.voltage().ifPresent(voltage -> same(load.id(), "voltage", voltage));
        }
        assessment.wiring().transformers().forEach(one -> same(one.id(), "load", one.loaded()));
        for (CableFigures cable : assessment.wiring().cables()) {
            cable.current().ifPresent(current -> same(cable.id(), "current", current));
            cable.lost().ifPresent(lost -> same(cable.id(), "drop", lost));
            cable.ampacity().ifPresent(most -> same(cable.id(), "ampacity", most));
            cable.conductor().ifPresent(label -> same(cable.id(), "conductor", section(label)));
        }
        assessment.wiring().conduits().forEach(conduit -> {
            conduit.fill().ifPresent(fill -> same(conduit.id(), "fill", fill));
            same(conduit.id(), "most fill", conduit.most());
            same(conduit.id(), "bends", conduit.bends());
        });
    }

    private Figure section(String label) {
        return assessment.site().catalog().electrical().conductors().stream()
                .filter(one -> one.label().equals(label))
                .map(ConductorSpec::metal)
                .findFirst()
                .orElseThrow()
                .area();
    }

    private void stakes() {
        SortedSet<String> labels = new TreeSet<>();
        for (Stake stake : assessment.staking().stakes()) {
            if (stake.tie().isEmpty() || !labels.add(stake.label())) {
                continue;
            }
            var tie = stake.tie().get();
            same(stake.label(), "first tape", tie.first().level());
            same(stake.label(), "second tape", tie.second().level());
            tie.check().ifPresent(check -> same(stake.label(), "check tape", check.level()));
            same(stake.label(), "crossing", tie.crossing());
            same(stake.label(), "within", tie.accuracy());
        }
    }

    private void watering() {
        assessment.schedule().zones().forEach((zone, schedule) -> {
            months(zone, schedule);
            month(zone, "peak", schedule.peak());
        });
        assessment.schedule().months().forEach(month -> {
            String name = ClimateMonth.name(month.reference().month());
            same("watering", "minutes " + name, month.week());
            same("watering", "volume " + name, month.volume());
        });
        same("watering", "volume year", assessment.schedule().year());
        assessment.schedule().peak().ifPresent(peak -> {
            same("watering", "volume peak", peak.volume());
            same("watering", "hours peak", peak.needed());
        });
    }

    private void months(ZoneId zone, ZoneSchedule schedule) {
        for (Month month : Month.values()) {
            month(zone, ClimateMonth.name(month), schedule.month(month));
        }
    }

    private void month(ZoneId zone, String when, ZoneMonth month) {
        same(zone, "use " + when, month.balance().use());
        same(zone, "held " + when, month.balance().held());
        same(zone, "rain " + when, month.balance().rain());
        same(zone, "net " + when, month.balance().net());
        same(zone, "gross " + when, month.balance().gross());
        same(zone, "interval " + when, month.balance().interval());
        same(zone, "days " + when, Count.of(month.setting().days().size()));
        same(zone, "cycles " + when, month.setting().cycles());
        same(zone, "cycle " + when, month.setting().cycle());
        same(zone, "soak " + when, month.setting().soak());
        same(zone, "minutes " + when, month.setting().week());
        same(zone, "volume " + when, month.volume());
    }

    /** A key that begins another key, or that two phases have, adds them up. */
    private void materials() {
        for (MaterialLine line : assessment.takeoff().lines()) {
            if (isAlone(line)) {
                same("materials", line.key(), line.quantity());
            }
        }
    }

    private boolean isAlone(MaterialLine line) {
        return assessment.takeoff().lines().stream()
                        .filter(other -> other.isCalled(line.key()))
                        .count()
                == 1;
    }

    private void budget() {
        Optional<BudgetSum> total = assessment.budget().total();
        if (total.isEmpty()) {
            return;
        }
        sums("", total.get());
        assessment.budget().byPhase().forEach((phase, sum) -> sums(" " + word(phase), sum));
        for (BudgetLine line : assessment.budget().lines()) {
            if (isAlone(line.material()) && line.purchase().isPresent()) {
                same("budget", line.material().key(), cost(line.purchase().get().amount()));
            }
        }
    }

    private void sums(String when, BudgetSum sum) {
        same("budget", "goods" + when, cost(sum.goods()));
        same("budget", "labour" + when, cost(sum.labour()));
        same("budget", "tax" + when, cost(sum.tax()));
        same("budget", "contingency" + when, cost(sum.contingency()));
        same("budget", "total" + when, cost(sum.total()));
    }

    private static Cost cost(Money money) {
        return new Cost(money.toBigMoney());
    }

    /** The kinds of things that a demo yard has, and the topics, are asked for each figure that they are said to have. */
    private void nothingIsLeftOut() {
        Assessment.figures().forEach((kind, names) -> {
            boolean isThere = kind.equals("stake") || asked.stream().anyMatch(one -> one.startsWith(kind + ": "));
            if (isThere) {
                names.forEach(
                        name -> assertTrue(isAsked(name.replaceAll(" ?\\[?[A-Z]+\\]?$", "")), kind + ": " + name));
            }
        });
    }

    private boolean isAsked(String word) {
        return asked.stream().anyMatch(one -> one.contains(": " + word));
    }

    /** Holds that each of these figures is another one in a yard with something changed. */
    static void differ(Assessment one, Assessment other, List<String> questions) {
        for (String question : questions) {
            String[] words = question.split(": ", 2);
            assertNotEquals(
                    one.why(words[0], words[1]).value(),
                    other.why(words[0], words[1]).value(),
                    question);
        }
    }
}
