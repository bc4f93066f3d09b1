package leat.script;

import java.util.Optional;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.VarSnippet;
import org.jspecify.annotations.Nullable;

/** The value of a variable that is about to be declared anew, for the case that the new declaration fails. */
final class KeptVariable {

    private final JavaShell java;
    private final VarSnippet old;
    private final @Nullable Object value;

    private KeptVariable(JavaShell java, VarSnippet old, @Nullable Object value) {
        this.java = java;
        this.old = old;
        this.value = value;
    }

    /** What the source would overwrite, if it declares a variable that is there already. */
    static Optional<KeptVariable> before(String source, JavaShell java) {
        JShell shell = java.shell();
        return java.analysis().sourceToSnippets(source).stream()
                .filter(VarSnippet.class::isInstance)
                .map(declared -> ((VarSnippet) declared).name())
                .flatMap(name -> shell.variables().filter(known -> known.name().equals(name)))
                .filter(known -> shell.status(known) == Snippet.Status.VALID)
                .findFirst()
                .map(known -> new KeptVariable(java, known, java.valueOf(known.name())));
    }

    void restore() {
        java.door().hand(value);
        String cast = "(" + old.typeName() + ") " + JavaPrelude.DOOR + ".handed();";
        java.shell().eval(old.typeName() + " " + old.name() + " = " + cast);
    }
}
