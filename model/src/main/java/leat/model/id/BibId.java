package leat.model.id;

import leat.model.fault.Require;

/** Names one hose bib; unique among its kind. */
public record BibId(String name) implements Id {

    public BibId {
        Require.name("hose bib", name);
    }

    @Override
    public String kind() {
        return "hose bib";
    }

    @Override
    public String toString() {
        return name;
    }
}
