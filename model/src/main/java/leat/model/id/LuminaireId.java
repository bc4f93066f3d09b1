package leat.model.id;

import leat.model.fault.Require;

/** Names one luminaire; unique among its kind. */
public record LuminaireId(String name) implements LoadId {

    public LuminaireId {
        Require.name("luminaire", name);
    }

    @Override
    public String kind() {
        return "luminaire";
    }

    @Override
    public String toString() {
        return name;
    }
}
