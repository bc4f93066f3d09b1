package leat.report;

import java.util.List;
import leat.draw.Canvas;
import leat.draw.Legend;
import leat.draw.PenPath;
import leat.draw.View;
import leat.model.geometry.Point;
import leat.model.geometry.Polyline;
import leat.model.geometry.Region;
import leat.model.id.Id;
import leat.model.quantity.Quantity;
import leat.model.quantity.UnitSystem;

/** What all painters of one sheet share: where they draw, at what scale, in which units, and who letters for them. */
record Board(Canvas canvas, View view, UnitSystem units, ReportFigures figures, Legend legend, Callouts callouts) {

    double x(Point point) {
        return view.x(point.xM());
    }

    double y(Point point) {
        return view.y(point.yM());
    }

    PenPath path(Polyline route) {
        return PenPath.polyline(sheet(route.points()));
    }

    PenPath path(Region region) {
        PenPath.Builder path = PenPath.builder();
        for (List<Point> ring : region.rings()) {
            path.polyline(sheet(ring)).close();
        }
        return path.build();
    }

    /** As x, y, x, y … on the sheet. */
    double[] sheet(List<Point> points) {
        double[] xy = new double[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            xy[2 * i] = x(points.get(i));
            xy[2 * i + 1] = y(points.get(i));
        }
        return xy;
    }

    String show(Quantity quantity) {
        return Words.show(quantity, units);
    }

    /** What was computed for a thing, to end its title with; empty if nothing was. */
    String computed(Id id) {
        StringBuilder text = new StringBuilder();
        figures.of(id)
                .forEach((name, value) ->
                        text.append(", ").append(name).append(' ').append(show(value)));
        return text.toString();
    }
}
