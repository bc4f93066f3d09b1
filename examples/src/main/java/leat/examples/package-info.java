/** Programs that embed Leat: they use model and calc only, and print what they find. */
@NullMarked
package leat.examples;

import org.jspecify.annotations.NullMarked;
