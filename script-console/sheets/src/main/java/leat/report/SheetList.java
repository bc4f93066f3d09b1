package leat.report;

import java.util.ArrayList;
import java.util.List;
import leat.calc.coverage.CoverageResult;
import leat.model.plan.Yard;

/** Which sheets a yard has, in their order. Whoever draws a sheet registers it here. */
final class SheetList {

    private record Wanted(String id, String about, PlanSheet.Content content) {}

    private final Yard yard;
    private final ReportFigures figures;
    private final List<Wanted> wanted = new ArrayList<>();

    SheetList(Yard yard, CoverageResult coverage, ReportFigures figures) {
        this.yard = yard;
        this.figures = figures;
        add(
                "plan",
                "Point at a symbol or a line for its figures. Printed at 100 % the sheet is to scale.",
                new WaterPlan(yard));
        if (!yard.power().isEmpty()) {
            add(
                    "power",
                    "Conduits are double lines; what passes through one is lettered beside it.",
                    new PowerPlan(yard));
        }
        if (!yard.trenches().isEmpty()) {
            add("trenches", "Point at a trench to see what lies in it.", new TrenchPlan(yard));
        }
        add("coverage", "How evenly water falls while all heads run.", new CoverageMap(yard, coverage));
    }

    private void add(String id, String about, PlanSheet.Content content) {
        wanted.add(new Wanted(id, about, content));
    }

    List<Sheet> sheets() {
        List<Sheet> sheets = new ArrayList<>();
        for (Wanted one : wanted) {
            String number = (sheets.size() + 1) + " of " + wanted.size();
            sheets.add(new Sheet(
                    one.id(),
                    one.content().title(),
                    one.about(),
                    PlanSheet.draw(yard, figures, one.content(), number)));
        }
        return sheets;
    }
}
