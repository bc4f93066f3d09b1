package leat.calc.hydraulics;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import leat.model.fault.Require;
import leat.model.finding.Finding;
import leat.model.finding.Reason;
import leat.model.finding.Status;
import leat.model.id.BibId;
import leat.model.id.HeadId;
import leat.model.id.PipeId;
import leat.model.id.ZoneId;

/**
 * All zones and bibs, each run alone, and what is wrong.
 *
 * @param status  PARTIAL if some could not be run; the reasons say why
 * @param reasons what could not be run
 */
public record HydraulicsResult(
        Status status,
        SortedMap<ZoneId, ZoneRun> zones,
        SortedMap<BibId, BibRun> bibs,
        List<Finding> findings,
        List<Reason> reasons) {

    public HydraulicsResult {
        Require.present("hydraulics", "status", status);
        zones = Collections.unmodifiableSortedMap(new TreeMap<>(zones));
        bibs = Collections.unmodifiableSortedMap(new TreeMap<>(bibs));
        findings = List.copyOf(findings);
        reasons = List.copyOf(reasons);
    }

    /** What the head gets while its zone runs; empty if its zone could not be run. */
    public Optional<HeadPressure> head(HeadId head) {
        return zones.values().stream()
                .flatMap(zone -> Optional.ofNullable(zone.heads().get(head)).stream())
                .findFirst();
    }

    /** The load of the pipe while most runs through it; empty if nothing that was run uses it. */
    public Optional<PipeLoad> pipe(PipeId pipe) {
        return Stream.concat(
                        zones.values().stream().map(ZoneRun::pipes),
                        bibs.values().stream().map(BibRun::pipes))
                .flatMap(pipes -> Optional.ofNullable(pipes.get(pipe)).stream())
                .max((a, b) -> a.flow().compareTo(b.flow()));
    }
}
