package leat.model.catalog;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.quantity.Flow;

/**
 * A device in the line.
 *
 * @param title      what the trade calls it
 * @param size       trade size of its connections
 * @param most       greatest flow it is made for
 * @param continuous flow it bears all day; empty where none is stated
 */
public record Device(
        String key,
        DeviceKind kind,
        String title,
        String size,
        LossLaw loss,
        Flow most,
        Optional<Flow> continuous,
        Citation citation) {

    public Device {
        Require.name("device", "key", key);
        Require.present("device " + key, "kind", kind);
        Require.present("device " + key, "title", title);
        Require.present("device " + key, "size", size);
        Require.present("device " + key, "loss", loss);
        Require.moreThan("device " + key, "most", most, Flow.ZERO);
        Require.present("device " + key, "continuous", continuous);
        Require.present("device " + key, "citation", citation);
    }
}
