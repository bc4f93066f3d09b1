/**
 * What is dug: how long, wide and deep each trench is, what lies in it and how deep, how much earth comes out and goes back.
 * <p>
 * Enter through {@link leat.calc.digging.Digging}. Takes trenches as they are, given or planned by
 * {@code leat.calc.trenching}, which also looks at where they run; changes nothing. See docs/theory/digging.md.
 */
@NullMarked
package leat.calc.digging;

import org.jspecify.annotations.NullMarked;
