package leat.calc;

/** The only way to stop a service from outside, and to hear how far it is. Services never look at a clock. */
public interface Progress {

    /** For callers that never stop anything and need no news. */
    Progress NONE = new Progress() {
        @Override
        public boolean stopped() {
            return false;
        }

        @Override
        public void at(double fraction, String what) {
            // nobody listens
        }
    };

    /** Whether the caller wants the best so far, now. */
    boolean stopped();

    /**
     * @param fraction of the work that is done, 0 to 1
     * @param what     is being done, in a few words
     */
    void at(double fraction, String what);
}
