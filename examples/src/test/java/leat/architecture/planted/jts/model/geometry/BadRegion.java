package leat.architecture.planted.jts.model.geometry;

import org.locationtech.jts.geom.Geometry;

record BadRegion(Geometry shape) {}
