/**
 * What is built now and what comes later: whether anything of now depends on what comes later, and where that which is
 * laid now ends until then.
 * <p>
 * Enter through {@link leat.calc.phasing.Phasing}. Looks at the plan alone, changes nothing. See docs/theory/phases.md.
 */
@NullMarked
package leat.calc.phasing;

import org.jspecify.annotations.NullMarked;
