package leat.calc.staking;

import leat.model.fault.Require;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;

/**
 * What the designer may choose about stakes.
 *
 * @param longestTape    that is at hand; default 30 m (100 ft), common practice, no source
 * @param reading        what a tape is off however short it is; default 10 mm for two people with a builder's tape,
 *     common practice, no source
 * @param perLength      what it is off besides, for its length: sag, pull, a slope not seen; default 1 mm for each metre,
 *     common practice, no source
 * @param sameStake      places nearer to each other than this share a stake; default 0.1 m, common practice, no source
 */
public record StakingParameters(Length longestTape, Length reading, Ratio perLength, Length sameStake) {

    public StakingParameters {
        Require.moreThan("staking", "longestTape", longestTape, Length.ZERO);
        Require.moreThan("staking", "reading", reading, Length.ZERO);
        Require.atLeast("staking", "perLength", perLength, Ratio.ZERO);
        Require.atLeast("staking", "sameStake", sameStake, Length.ZERO);
    }

    public static StakingParameters defaults() {
        return new StakingParameters(Length.metres(30), Length.millimetres(10), Ratio.of(0.001), Length.metres(0.1));
    }

    public StakingParameters withLongestTape(Length length) {
        return new StakingParameters(length, reading, perLength, sameStake);
    }

    public StakingParameters withReading(Length length) {
        return new StakingParameters(longestTape, length, perLength, sameStake);
    }

    public StakingParameters withPerLength(Ratio ratio) {
        return new StakingParameters(longestTape, reading, ratio, sameStake);
    }

    public StakingParameters withSameStake(Length length) {
        return new StakingParameters(longestTape, reading, perLength, length);
    }
}
