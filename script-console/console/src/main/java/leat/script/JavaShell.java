package leat.script;

import java.io.File;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.VarSnippet;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;
import leat.model.fault.LeatException;
import leat.model.plan.Parts;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;

/** Java that is compiled and run snippet by snippet in this process, with the words of Leat at hand. Not confined. */
final class JavaShell implements AutoCloseable {

    /** How long our own calculations may take to notice that they should stop, before they are torn down. */
    private static final Duration HEED = Duration.ofMillis(300);

    private final JShell shell;
    private final SnippetLoader loader;
    private final SnippetControl control;

    JavaShell(Surface surface, List<Class<?>> vocabulary, SessionFunctions functions) {
        if (ModuleLayer.boot().findModule("jdk.jshell").isEmpty()) {
            throw new LeatException("scripts in Java need a JDK; this Java (" + System.getProperty("java.home")
                    + ") is a runtime only");
        }
        loader = new SnippetLoader(functions);
        control = new SnippetControl(loader);
        shell = JShell.builder()
                .executionEngine(new Provider(control), Map.of())
                .compilerOptions("-proc:none")
                .build();
        classPath().forEach(shell::addToClasspath);
        for (String snippet : JavaPrelude.snippets(surface, vocabulary)) {
            prepare(snippet);
        }
    }

    private void prepare(String snippet) {
        SnippetEvent event = shell.eval(snippet).get(0);
        if (event.status() != Snippet.Status.VALID) {
            throw new IllegalStateException("the prelude is refused: " + snippet);
        }
    }

    /** Where the compiler finds what the prelude imports: the jars or folders that our own classes come from. */
    private static Set<String> classPath() {
        Set<String> places = new LinkedHashSet<>();
        for (Class<?> each : List.of(JavaShell.class, leat.calc.Progress.class, Parts.class, NullMarked.class)) {
            try {
                places.add(Path.of(each.getProtectionDomain()
                                .getCodeSource()
                                .getLocation()
                                .toURI())
                        .toString());
            } catch (URISyntaxException impossible) {
                throw new IllegalStateException(impossible);
            }
        }
        for (String each : System.getProperty("java.class.path").split(File.pathSeparator)) {
            places.add(each);
        }
        return places;
    }

    JavaDoor door() {
        return loader.door();
    }

    /** The value of a variable of the snippets, or of a constant that was imported. */
    @Nullable
    Object valueOf(String name) {
        Optional<VarSnippet> variable =
                shell.variables().filter(known -> known.name().equals(name)).findFirst();
        return variable.isPresent() ? ofVariable(variable.get()) : ofConstant(name);
    }

    /** Compiles nothing: a variable's type may be one that cannot be written, and Java 25's compiler fails on some. */
    private @Nullable Object ofVariable(VarSnippet variable) {
        shell.varValue(variable);
        return control.seen();
    }

    private @Nullable Object ofConstant(String name) {
        SnippetEvent event =
                shell.eval(JavaPrelude.DOOR + ".hand(" + name + ");").get(0);
        if (event.status() != Snippet.Status.VALID || event.exception() != null) {
            throw new IllegalStateException("cannot be read: " + name);
        }
        return loader.door().handed();
    }

    JShell shell() {
        return shell;
    }

    SourceCodeAnalysis analysis() {
        return shell.sourceCodeAnalysis();
    }

    /** @param ended counted down when the snippet that is to be stopped has ended by itself */
    Halt halt(CountDownLatch ended) {
        return new Halt() {
            @Override
            public void interrupt(Duration grace) throws InterruptedException {
                if (!ended.await(HEED.toMillis(), TimeUnit.MILLISECONDS)) {
                    shell.stop();
                }
            }

            @Override
            public void abandon() {
                shell.close();
            }
        };
    }

    @Override
    public void close() {
        shell.close();
    }

    /** Has snippets run by that control. */
    private record Provider(SnippetControl control) implements ExecutionControlProvider {

        @Override
        public String name() {
            return "leat";
        }

        @Override
        public ExecutionControl generate(ExecutionEnv environment, Map<String, String> parameters) {
            return control;
        }
    }
}
