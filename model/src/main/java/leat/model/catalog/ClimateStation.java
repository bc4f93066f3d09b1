package leat.model.catalog;

import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.water.Climate;

/** The climate of a place that many yards may share. */
public record ClimateStation(String key, Climate climate, Citation citation) {

    public ClimateStation {
        Require.name("climate station", "key", key);
        Require.present("climate station " + key, "climate", climate);
        Require.present("climate station " + key, "citation", citation);
    }
}
