package leat.calc.coverage;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.finding.Finding;
import leat.model.finding.Ledger;
import leat.model.finding.Status;
import leat.model.id.HeadId;
import leat.model.id.SurfaceId;
import leat.model.quantity.Area;

/**
 * How lawns and watered beds are covered.
 *
 * @param surfaces each lawn and bed that is watered by heads
 * @param wasted   for each head that throws on paving, on structures or outside the lot, how much ground that is, beyond the
 *                 strip that the parameters allow
 */
public record CoverageResult(
        Status status,
        SortedMap<SurfaceId, SurfaceCoverage> surfaces,
        SortedMap<HeadId, Area> wasted,
        List<Finding> findings) {

    public CoverageResult {
        Require.present("coverage result", "status", status);
        surfaces = Collections.unmodifiableSortedMap(new TreeMap<>(surfaces));
        wasted = Collections.unmodifiableSortedMap(new TreeMap<>(wasted));
        findings = List.copyOf(findings);
    }

    /**
     * How a figure of a surface came about; the last line equals it to the last bit.
     *
     * @param figure {@code reached}, {@code rate}, {@code low quarter} or {@code christiansen}
     * @throws InvalidValueException if the surface is not watered by heads, or there is no such figure
     */
    public Ledger why(SurfaceId surface, String figure) {
        SurfaceCoverage coverage = surfaces.get(surface);
        if (coverage == null) {
            throw new InvalidValueException(
                    "why", "surface", "'" + surface + "'", "a lawn or a bed that is watered by heads");
        }
        return new CoverageLedger(coverage).of(figure);
    }
}
