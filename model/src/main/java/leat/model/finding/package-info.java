/**
 * What calculations say of a design: findings against rules, how a result ended, and how a figure came about. Each idea
 * stands here once for all services.
 */
@NullMarked
package leat.model.finding;

import org.jspecify.annotations.NullMarked;
