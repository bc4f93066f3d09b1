/**
 * What is thrown when input has no meaning, and the checks that throw it.
 * <p>
 * The lowest package: everything may use it, it uses nothing. A bad design is never thrown; it is a
 * {@code leat.model.finding.Finding}.
 */
@NullMarked
package leat.model.fault;

import org.jspecify.annotations.NullMarked;
