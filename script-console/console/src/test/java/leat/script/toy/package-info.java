/** A small stand-in for the model, with one type for each kind of value that scripts meet. */
@NullMarked
package leat.script.toy;

import org.jspecify.annotations.NullMarked;
