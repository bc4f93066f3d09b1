package leat.report;

/** Sentences that go with every plan, and those that go with what is in it. */
final class Cautions {

    static final String GENERAL = "This plan is an aid to thinking and to buying. Local codes, the permit office, the"
            + " water supplier and licensed trades decide what may be built; where they differ from this plan, follow"
            + " them.";

    private Cautions() {}
}
