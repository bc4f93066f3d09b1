/** Names of things, one record for each kind, so that a head's name is never taken for a valve's. */
@NullMarked
package leat.model.id;

import org.jspecify.annotations.NullMarked;
