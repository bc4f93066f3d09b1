/** What is dug, how deep, and what lies in it. */
@NullMarked
package leat.model.trench;

import org.jspecify.annotations.NullMarked;
