/** What the documents say about files of this project is true. */
@NullMarked
package leat.docs;

import org.jspecify.annotations.NullMarked;
