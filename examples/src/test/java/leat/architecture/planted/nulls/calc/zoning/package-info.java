@NullMarked
package leat.architecture.planted.nulls.calc.zoning;

import org.jspecify.annotations.NullMarked;
