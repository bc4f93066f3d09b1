/**
 * In which order a plan is dug, laid, tested and covered, step by step.
 * <p>
 * Enter through {@link leat.calc.workplan.WorkPlan}. Steps come from what is on the plan: what must be done before what is
 * an edge of a graph, and the order is one that keeps all edges. See docs/theory/digging.md.
 */
@NullMarked
package leat.calc.workplan;

import org.jspecify.annotations.NullMarked;
