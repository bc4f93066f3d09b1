/**
 * What all services share: how they are stopped and what a stage answers. Each service has a package of its own below;
 * only {@code leat.calc.assess} strings them together.
 */
@NullMarked
package leat.calc;

import org.jspecify.annotations.NullMarked;
