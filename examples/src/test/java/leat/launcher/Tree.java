package leat.launcher;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;

/** A tree with the real launcher, one source, and a stand-in for the build that notes each call. */
final class Tree {

    private final Path root;
    private final Path tools;
    private final Path launcher;

    /** What the launcher did. */
    record Outcome(int exitCode, String out, String err) {}

    Tree(Path folder, Path realLauncher) throws IOException {
        root = Files.createDirectories(folder.resolve("src").resolve("a yard"));
        tools = Files.createDirectories(folder.resolve("tools"));
        launcher = Files.createDirectories(root.resolve("script-console/bin")).resolve("leat");
        Files.copy(realLauncher, launcher);
        Files.createDirectories(source().getParent());
        Files.writeString(source(), "class Source {}");
        for (String file : List.of("pom.xml", "calc/pom.xml", "model/pom.xml", "script-console/pom.xml")) {
            Files.createDirectories(root.resolve(file).getParent());
            Files.writeString(root.resolve(file), "<project/>");
        }
        writeJar(folder.resolve("leat.jar"));
        Path build = tools.resolve("mvn");
        Files.writeString(build, """
                #!/bin/sh
                echo "called" >>"%1$s/calls"
                [ ! -e "%1$s/broken" ] || exit 1
                sleep 0.3
                mkdir -p script-console/console/.leat/build/lib
                cp "%1$s/leat.jar" script-console/console/.leat/build/leat.jar
                """.formatted(folder));
        Files.setPosixFilePermissions(build, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    Path source() {
        return root.resolve("model/src/main/java/Source.java");
    }

    Path launcher() {
        return launcher;
    }

    int builds() throws IOException {
        Path calls = tools.resolveSibling("calls");
        return Files.exists(calls) ? Files.readAllLines(calls).size() : 0;
    }

    void breakTheBuild() throws IOException {
        Files.createFile(tools.resolveSibling("broken"));
    }

    Outcome run(String... arguments) throws IOException, InterruptedException {
        return finish(start(launcher, arguments));
    }

    Process start(Path command, String... arguments) throws IOException {
        List<String> line = new ArrayList<>(List.of("sh", command.toString()));
        line.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(line).directory(tools.toFile());
        builder.environment().merge("PATH", tools.toString(), (path, first) -> first + ":" + path);
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().put("LEAT_JAVA_OPTS", "-Dextra=+");
        return builder.start();
    }

    static Outcome finish(Process process) throws IOException, InterruptedException {
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), UTF_8);
        String err = new String(process.getErrorStream().readAllBytes(), UTF_8);
        return new Outcome(process.waitFor(), out, err);
    }

    private static void writeJar(Path jar) throws IOException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Echo.class.getName());
        String entry = Echo.class.getName().replace('.', '/') + ".class";
        try (OutputStream file = Files.newOutputStream(jar);
                JarOutputStream out = new JarOutputStream(file, manifest);
                InputStream in = Tree.class.getClassLoader().getResourceAsStream(entry)) {
            out.putNextEntry(new JarEntry(entry));
            in.transferTo(out);
        }
    }
}
