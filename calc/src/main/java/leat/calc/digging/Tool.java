package leat.calc.digging;

import leat.model.catalog.Rules;
import leat.model.finding.Rule;

/**
 * What a trench is dug with, and how wide that digs.
 *
 * @param name  such as {@code spade}
 * @param rule  whose limit is the width of what it digs
 */
record Tool(String name, Rule rule) {

    /** How deep each machine reaches; common practice, no source. */
    private static final double CHAIN_REACH_M = 0.6;

    private static final double LONG_CHAIN_REACH_M = 1.2;

    static Tool of(boolean byHand, double depthM, Rules rules) {
        if (byHand) {
            return new Tool("spade", rules.get("digging.width.hand"));
        }
        if (depthM <= CHAIN_REACH_M) {
            return new Tool("chain trencher", rules.get("digging.width.chain"));
        }
        return depthM <= LONG_CHAIN_REACH_M
                ? new Tool("large chain trencher", rules.get("digging.width.chain.deep"))
                : new Tool("bucket", rules.get("digging.width.bucket"));
    }

    double widthM() {
        return rule.limit().si();
    }
}
