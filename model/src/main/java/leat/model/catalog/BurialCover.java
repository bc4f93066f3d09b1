package leat.model.catalog;

import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.power.CodeFamily;
import leat.model.quantity.Length;

/**
 * How deep something must lie.
 *
 * @param cover from the finished surface down to its top
 */
public record BurialCover(CodeFamily family, BuriedUnder under, BuriedAs as, Length cover, Citation citation) {

    public BurialCover {
        Require.present("burial cover", "family", family);
        Require.present("burial cover", "under", under);
        Require.present("burial cover", "as", as);
        Require.atLeast("burial cover", "cover", cover, Length.ZERO);
        Require.present("burial cover", "citation", citation);
    }
}
