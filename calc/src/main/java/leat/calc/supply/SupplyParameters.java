package leat.calc.supply;

/** Supply has nothing to choose: its limits are rules. */
public record SupplyParameters() {

    public static SupplyParameters defaults() {
        return new SupplyParameters();
    }
}
