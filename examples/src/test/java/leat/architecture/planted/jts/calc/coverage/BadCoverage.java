package leat.architecture.planted.jts.calc.coverage;

import org.locationtech.jts.geom.Geometry;

record BadCoverage(Geometry wet) {}
