package leat.model.plan;

/**
 * A thing as a script states it: unfinished, immutable, without getters. Each setter gives a new part; names of other
 * things are plain text until {@link Yard#with} resolves them.
 */
public abstract sealed class Part
        permits TransformerPart,
                TraversePart,
                LevelPart,
                SurfacePart,
                ObstaclePart,
                GroundRulePart,
                SourcePart,
                PipePart,
                BackflowPart,
                ManifoldPart,
                ZonePart,
                HeadPart,
                BibPart,
                CodePart,
                PanelPart,
                CircuitPart,
                LoadPart,
                ConduitPart,
                CablePart,
                TrenchPart,
                WateringPart,
                FamilyPart,
                LimitPart,
                TemporaryPart,
                BudgetPart,
                GroupPart {

    Part() {}

    /** Converts this part into things of the model, or complains of what it lacks. */
    abstract void addTo(YardDraft draft);
}
