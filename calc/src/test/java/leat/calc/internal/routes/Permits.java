package leat.calc.internal.routes;

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
