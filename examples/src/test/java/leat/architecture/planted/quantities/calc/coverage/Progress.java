package leat.architecture.planted.quantities.calc.coverage;

public interface Progress {

    void goodAt(double fraction, String what);
}
