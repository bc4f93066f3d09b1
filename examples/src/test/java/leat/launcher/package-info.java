/** The launcher {@code script-console/bin/leat}, tried in a tree of its own with a stand-in for the build. */
@NullMarked
package leat.launcher;

import org.jspecify.annotations.NullMarked;
