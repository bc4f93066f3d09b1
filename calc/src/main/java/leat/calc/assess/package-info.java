/**
 * Strings the services together.
 * <p>
 * {@link leat.calc.assess.Planner} runs the stages: place heads, part them into zones, route trenches and pipes, size
 * the pipes. {@link leat.calc.assess.Assessor} runs the calculations and gives an {@link leat.calc.assess.Assessment}
 * with all results and findings. No other package knows more than one service; a sweep that wants one figure runs that
 * one calculation instead.
 */
@NullMarked
package leat.calc.assess;

import org.jspecify.annotations.NullMarked;
