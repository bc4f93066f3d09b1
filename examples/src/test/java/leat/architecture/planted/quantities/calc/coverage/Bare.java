package leat.architecture.planted.quantities.calc.coverage;

import java.util.List;
import java.util.OptionalDouble;

public record Bare(String name) {

    public double badReturn() {
        return 1;
    }

    public Bare badParameter(double radius) {
        return new Bare(name + radius);
    }

    public double[] badArray() {
        return new double[0];
    }

    public List<Double> badList() {
        return List.of();
    }

    public OptionalDouble badOptional() {
        return OptionalDouble.empty();
    }

    public int goodCount() {
        return 1;
    }

    double goodInside() {
        return 1;
    }
}
