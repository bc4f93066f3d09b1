package leat.model.water;

import java.util.List;
import java.util.Optional;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Require;
import leat.model.geometry.Polyline;
import leat.model.id.PipeId;
import leat.model.id.UpstreamId;
import leat.model.site.Phase;

/**
 * A run of pipe of one series and size. It starts at what feeds it: at a source, at a zone valve, or at the place of
 * another run that is nearest to its own start.
 *
 * @param from     what feeds it
 * @param route    from the upstream to the downstream end
 * @param series   of the catalogue of pipes
 * @param size     trade size; empty while it is still to be chosen
 * @param fitted   catalogue keys of strainers, check valves and the like at its inlet, in the direction of the flow
 * @param existing lies there already
 */
public record PipeRun(
        PipeId id,
        UpstreamId from,
        Polyline route,
        String series,
        Optional<String> size,
        List<String> fitted,
        boolean existing,
        Phase phase) {

    public PipeRun {
        Require.present("pipe", "id", id);
        String thing = "pipe " + id;
        Require.present(thing, "from", from);
        Require.present(thing, "route", route);
        Require.name(thing, "series", series);
        Require.present(thing, "size", size);
        size.ifPresent(one -> Require.name(thing, "size", one));
        fitted = Require.entries(thing, "fitted", fitted);
        fitted.forEach(key -> Require.name(thing, "fitted", key));
        Require.present(thing, "phase", phase);
        if (from.equals(id)) {
            throw new InvalidValueException(thing, "from", "itself", "another pipe, a source or a valve");
        }
    }

    /** A run with nothing at its inlet. */
    public PipeRun(
            PipeId id,
            UpstreamId from,
            Polyline route,
            String series,
            Optional<String> size,
            boolean existing,
            Phase phase) {
        this(id, from, route, series, size, List.of(), existing, phase);
    }

    /** Empty while the size is still to be chosen. */
    public Optional<TradeSize> tradeSize() {
        return size.map(one -> new TradeSize(series, one));
    }

    public PipeRun withSize(String newSize) {
        return new PipeRun(id, from, route, series, Optional.of(newSize), fitted, existing, phase);
    }

    /** The same run before its size was chosen. */
    public PipeRun withoutSize() {
        return new PipeRun(id, from, route, series, Optional.empty(), fitted, existing, phase);
    }
}
