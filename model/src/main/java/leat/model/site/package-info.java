/**
 * The place as the survey found it and as it will be: lot, ground, surfaces, what stands or lies in the way.
 * <p>
 * {@link leat.model.site.Terrain} holds all of it. Pipes, heads and trenches are in their own packages.
 */
@NullMarked
package leat.model.site;

import org.jspecify.annotations.NullMarked;
