package leat.model.catalog;

import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.quantity.Ratio;

/** A factor that is taken where nothing better is known. */
public record UsualFigure(Ratio value, Citation citation) {

    public UsualFigure {
        Require.moreThan("usual figure", "value", value, Ratio.ZERO);
        Require.present("usual figure", "citation", citation);
    }
}
