package leat.calc.trenching.internal;

/** Stand-ins for what surrounds a search. */
enum Permits implements SharedTrench.Permit {
    ANYWHERE;

    @Override
    public boolean allows(double xM, double yM) {
        return true;
    }

    @Override
    public boolean stopped() {
        return false;
    }
}
