/**
 * The whole plan: {@link leat.model.plan.Yard}, the vocabulary of {@link leat.model.plan.Parts} that builds one, and
 * {@link leat.model.plan.Site}, which is all that a calculation may know.
 */
@NullMarked
package leat.model.plan;

import org.jspecify.annotations.NullMarked;
