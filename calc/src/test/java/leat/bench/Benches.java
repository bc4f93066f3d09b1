package leat.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.openjdk.jmh.runner.RunnerException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Command: runs the benchmark that is named, or prints the names. Exit code 1 if an answer does not count. */
public final class Benches {

    private static final List<Bench> ALL = List.of(
            new TreeBench(),
            new CoverageBench("coverage", 0.25),
            new CoverageBench("coverage-fine", 0.1),
            new DesignBench(),
            new TrenchBench(),
            new ZoningBench(),
            new SizingBench(),
            new CircuitBench());

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private Benches() {}

    public static void main(String[] arguments) throws IOException, RunnerException {
        if (arguments.length == 0) {
            ALL.forEach(bench -> System.out.println(bench.name()));
            return;
        }
        Optional<Bench> bench =
                ALL.stream().filter(one -> one.name().equals(arguments[0])).findFirst();
        if (bench.isEmpty()) {
            System.err.println("no benchmark is called " + arguments[0] + "; run without arguments for the names");
            System.exit(2);
            return;
        }
        boolean fair = arguments.length == 1 ? runDefault(bench.get()) : runFile(bench.get(), Path.of(arguments[1]));
        System.exit(fair ? 0 : 1);
    }

    private static boolean runDefault(Bench bench) throws IOException, RunnerException {
        String resource = "/bench/" + bench.defaultInstance();
        try (InputStream in = Benches.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IOException("no resource " + resource);
            }
            return run(bench, bench.defaultInstance(), JSON.readTree(in));
        }
    }

    private static boolean runFile(Bench bench, Path file) throws IOException, RunnerException {
        try (InputStream in = Files.newInputStream(file)) {
            return run(bench, String.valueOf(file.getFileName()), JSON.readTree(in));
        }
    }

    private static boolean run(Bench bench, String instance, JsonNode tree) throws RunnerException {
        Contest contest = bench.contest(tree);
        Entrant ours = contest.ours();
        double oursS = Race.seconds(ours);
        ours.solve();
        Answer oursAnswer = ours.answer();
        boolean fair = oursAnswer.disagreementWith(oursAnswer).isEmpty();
        for (Entrant rival : contest.rivals()) {
            double rivalS = Race.seconds(rival);
            rival.solve();
            Answer answer = rival.answer();
            Optional<String> fault =
                    oursAnswer.disagreementWith(oursAnswer).or(() -> answer.disagreementWith(oursAnswer));
            fair &= fault.isEmpty();
            Map<String, Object> line = new LinkedHashMap<>();
            line.put("name", bench.name() + " " + instance);
            line.put("ours_s", oursS);
            line.put("rival", rival.name());
            line.put("rival_s", rivalS);
            line.put("ratio", rivalS / oursS);
            line.put("answer", fault.map(text -> "DOES NOT COUNT, " + text).orElse("agrees: " + oursAnswer));
            line.put("java", System.getProperty("java.version"));
            line.put("cores", Runtime.getRuntime().availableProcessors());
            System.out.println(JSON.writeValueAsString(line));
        }
        return fair;
    }
}
