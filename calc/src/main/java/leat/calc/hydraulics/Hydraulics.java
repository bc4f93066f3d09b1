package leat.calc.hydraulics;

import leat.calc.Progress;
import leat.model.finding.Ledger;
import leat.model.id.Id;
import leat.model.plan.Site;

/** The calculation of pressures and flows, each zone and each bib running alone. */
public final class Hydraulics {

    private Hydraulics() {}

    public static HydraulicsResult run(Site site, HydraulicsParameters parameters, Progress progress) {
        return prepare(site, parameters).result(progress);
    }

    /** Lays out the pipes once, for those who solve again and again. */
    public static Network prepare(Site site, HydraulicsParameters parameters) {
        return new Network(site, parameters);
    }

    /** How a figure of a head, a bib, a zone or a pipe came about; see {@link Network#why}. */
    public static Ledger why(Site site, HydraulicsParameters parameters, Id id, String figure) {
        return prepare(site, parameters).why(id, figure);
    }
}
