package leat.script;

import java.util.Collection;
import java.util.TreeSet;

/** A shell with what it takes to explain its failures. */
record JavaWorld(JavaShell java, JavaText text) implements AutoCloseable {

    JavaWorld(Surface surface, Prelude prelude, SessionFunctions functions, UnitsSeen units) {
        this(new JavaShell(surface, prelude.vocabulary(), functions), surface, prelude, units);
    }

    private JavaWorld(JavaShell java, Surface surface, Prelude prelude, UnitsSeen units) {
        this(java, new JavaText(java, rewording(java, surface, prelude, units)));
    }

    private static JavaRewording rewording(JavaShell java, Surface surface, Prelude prelude, UnitsSeen units) {
        Wording wording = new Views(surface, prelude.examples(), units).wording();
        return new JavaRewording(surface, wording, () -> names(java, prelude));
    }

    private static Collection<String> names(JavaShell java, Prelude prelude) {
        TreeSet<String> names = new TreeSet<>(prelude.names());
        java.shell().variables().forEach(variable -> names.add(variable.name()));
        java.shell().methods().forEach(method -> names.add(method.name()));
        java.shell().types().forEach(type -> names.add(type.name()));
        names.removeIf(name -> name.contains("$"));
        return names;
    }

    @Override
    public void close() {
        java.close();
    }
}
