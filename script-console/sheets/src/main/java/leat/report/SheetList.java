package leat.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.assess.Assessment;
import leat.calc.coverage.CoverageResult;
import leat.draw.Drawing;
import leat.model.id.SegmentId;
import leat.model.plan.Yard;

/** Which sheets a yard has, in their order. Whoever draws a sheet registers it here. */
final class SheetList {

    /** Draws when the number is known. */
    private interface Drawer {
        Drawing draw(String number);
    }

    private record Wanted(String id, String title, String about, Drawer drawer) {}

    private final Yard yard;
    private final ReportFigures figures;
    private final List<Wanted> wanted = new ArrayList<>();

    private SheetList(Yard yard, ReportFigures figures) {
        this.yard = yard;
        this.figures = figures;
    }

    /** What the yard says and what was computed for it. */
    static List<Sheet> of(Assessment assessment) {
        return sheets(
                assessment.yard(),
                assessment.coverage(),
                AssessedFigures.of(assessment),
                TrenchKind.of(assessment.digging()));
    }

    /** What the yard says by itself. */
    static List<Sheet> of(Yard yard, CoverageResult coverage, ReportFigures figures) {
        return sheets(yard, coverage, figures, List.of());
    }

    private static List<Sheet> sheets(
            Yard yard, CoverageResult coverage, ReportFigures figures, List<TrenchKind> kinds) {
        SheetList list = new SheetList(yard, figures);
        list.plan(
                "plan",
                "Point at a symbol or a line for its figures. Printed at 100 % the sheet is to scale.",
                new WaterPlan(yard));
        if (!yard.power().isEmpty()) {
            list.plan(
                    "power",
                    "Conduits are double lines; what passes through one is lettered beside it.",
                    new PowerPlan(yard));
        }
        if (!yard.trenches().isEmpty()) {
            SortedMap<SegmentId, String> letters =
                    kinds.isEmpty() ? Collections.unmodifiableSortedMap(new TreeMap<>()) : TrenchKind.letters(kinds);
            list.plan("trenches", "Point at a trench to see what lies in it.", new TrenchPlan(yard, letters));
        }
        if (!kinds.isEmpty()) {
            list.wanted.add(new Wanted(
                    "trench-sections",
                    CrossSectionSheet.TITLE,
                    "How each kind of trench looks when it is cut across.",
                    number -> CrossSectionSheet.draw(yard, kinds, number)));
        }
        list.plan("coverage", "How evenly water falls while all heads run.", new CoverageMap(yard, coverage));
        return list.drawn();
    }

    private void plan(String id, String about, PlanSheet.Content content) {
        wanted.add(new Wanted(id, content.title(), about, number -> PlanSheet.draw(yard, figures, content, number)));
    }

    private List<Sheet> drawn() {
        List<Sheet> sheets = new ArrayList<>();
        for (Wanted one : wanted) {
            String number = (sheets.size() + 1) + " of " + wanted.size();
            sheets.add(
                    new Sheet(one.id(), one.title(), one.about(), one.drawer().draw(number)));
        }
        return List.copyOf(sheets);
    }
}
