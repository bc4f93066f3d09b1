package leat.architecture.planted.jts.calc.coverage.internal;

import org.locationtech.jts.geom.Geometry;

record GoodUnion(Geometry shape) {}
