package leat.model.site;

import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.geometry.Region;
import leat.model.id.ObstacleId;
import leat.model.quantity.Length;

/** Something that stands in the way of trenches. */
public sealed interface Obstacle permits Obstacle.Block, Obstacle.Tree {

    ObstacleId id();

    /** A wall, a boulder, a tank: no trench goes through it. */
    record Block(ObstacleId id, Region region) implements Obstacle {
        public Block {
            Require.present("obstacle", "id", id);
            Require.present("obstacle " + id, "region", region);
        }
    }

    /**
     * A tree with the roots around it.
     *
     * @param trunk diameter at breast height, more than 0
     */
    record Tree(ObstacleId id, Point at, Length trunk) implements Obstacle {

        /** 0.3 m of root zone for each 25 mm of trunk: common practice, no source; compare ANSI A300 and BS 5837. */
        private static final double ROOT_RADIUS_PER_TRUNK = 12;

        public Tree {
            Require.present("tree", "id", id);
            Require.present("tree " + id, "at", at);
            Require.moreThan("tree " + id, "trunk", trunk, Length.ZERO);
        }

        /** Radius of the zone in which a trench is dug by hand, if at all. */
        public Length rootZone() {
            return trunk.times(ROOT_RADIUS_PER_TRUNK);
        }
    }
}
