/**
 * What the heads put on lawns and watered beds: how many reach each spot, how fast and how evenly water falls, and what they
 * throw where none should be.
 * <p>
 * Enter through {@link leat.calc.coverage.Coverage}. The ground is judged on square cells, each by its centre. Heads that do not
 * throw (bubblers, drip lines) have no part in it. Nothing casts a shadow: a wall does not stop water here, but a head that
 * throws on a structure is found. Pressures are {@code leat.calc.hydraulics}; what they make of radius and flow may be handed in.
 */
@NullMarked
package leat.calc.coverage;

import org.jspecify.annotations.NullMarked;
