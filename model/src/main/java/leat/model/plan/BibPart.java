package leat.model.plan;

import leat.model.id.BibId;
import leat.model.id.PipeId;
import leat.model.quantity.Flow;
import leat.model.site.Phase;
import leat.model.water.HoseBib;

/** A hose bib. */
public final class BibPart extends Part {

    /** A garden hose of 5/8 in draws about this much; common practice, no source. */
    private static final Flow USUAL_DRAW = Flow.gpm(5);

    private final String name;
    private final Place at;
    private final Fields fields;

    BibPart(String name, Place at, Fields fields) {
        this.name = name;
        this.at = at;
        this.fields = fields;
    }

    /** The pipe of the main that feeds it; left out, it is planned. */
    public BibPart on(String pipe) {
        return set("on", pipe);
    }

    /** Flow with the hose open; 5 gpm if left out. */
    public BibPart draws(Flow flow) {
        return set("draws", flow);
    }

    /** It has no vacuum breaker of its own. */
    public BibPart withoutVacuumBreaker() {
        return set("vacuumBreaker", false);
    }

    public BibPart phase(Phase phase) {
        return set("phase", phase);
    }

    private BibPart set(String field, Object value) {
        return new BibPart(name, at, fields.with(field, value));
    }

    @Override
    void addTo(YardDraft draft) {
        draft.bib(new HoseBib(
                new BibId(name),
                at.in(draft.units()),
                fields.find("on", String.class).map(PipeId::new),
                fields.get("draws", USUAL_DRAW, Flow.class),
                fields.get("vacuumBreaker", true, Boolean.class),
                fields.get("phase", Phase.NOW, Phase.class)));
    }
}
