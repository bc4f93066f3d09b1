package leat.report;

import java.util.List;
import java.util.Map;
import leat.calc.assess.Assessment;
import leat.model.quantity.UnitSystem;

/** What to buy and what it costs. */
final class MoneySections {

    private MoneySections() {}

    static List<Section> of(Assessment assessment) {
        UnitSystem units = assessment.yard().units();
        Section materials = Section.of(Chapter.MONEY, "materials", "Materials")
                .say("Counted on the plan, without waste. Ask the console why a material is needed so often: it names"
                        + " each place.")
                .table("", MaterialTables.materials(assessment.takeoff(), units));
        Section cuts = Section.of(Chapter.MONEY, "cuts", "Cutting list")
                .say("How to cut pipe that comes in equal lengths, so that little is left over.")
                .table("", MaterialTables.cuts(assessment.takeoff(), units));
        if (!materials.isEmpty()) {
            for (Map.Entry<String, byte[]> file : TakeoffFiles.of(assessment).entrySet()) {
                materials = materials.file(file.getKey(), file.getValue());
            }
        }
        return List.of(materials, cuts, budget(assessment, materials.isEmpty()));
    }

    private static Section budget(Assessment assessment, boolean nothingToBuy) {
        Section budget = Section.of(Chapter.MONEY, "budget", "Budget");
        if (nothingToBuy) {
            return budget;
        }
        if (assessment.budget().byPhase().isEmpty()) {
            return budget.missing(
                    "Not computed: the yard states no prices. The words budget().prices(…) add them, from a price table"
                            + " with source and date.");
        }
        return budget.say("Prices are those of the price table, with its sources and dates. A line without a price is"
                        + " shown, and a total that leaves one out says that it is incomplete.")
                .table("Sums", BudgetTables.sums(assessment.budget()))
                .table(
                        "Lines",
                        BudgetTables.lines(
                                assessment.budget(), assessment.yard().units()));
    }
}
