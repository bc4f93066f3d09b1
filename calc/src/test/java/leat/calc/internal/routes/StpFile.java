package leat.calc.internal.routes;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Reads a Steiner instance in the open STP text format, of which only nodes, edges and terminals are needed. */
record StpFile(Graph graph, int[] terminals) {

    static StpFile read(String name) {
        int nodes = 0;
        List<int[]> edges = new ArrayList<>();
        List<Integer> terminals = new ArrayList<>();
        for (String line : text(name).lines().toList()) {
            String[] word = line.strip().split("\\s+");
            switch (word[0]) {
                case "Nodes" -> nodes = Integer.parseInt(word[1]);
                case "E" ->
                    edges.add(new int[] {
                        Integer.parseInt(word[1]) - 1, Integer.parseInt(word[2]) - 1, Integer.parseInt(word[3])
                    });
                case "T" -> terminals.add(Integer.parseInt(word[1]) - 1);
                default -> {}
            }
        }
        Graph graph = Graph.of(
                nodes,
                edges.stream().mapToInt(e -> e[0]).toArray(),
                edges.stream().mapToInt(e -> e[1]).toArray(),
                edges.stream().mapToDouble(e -> e[2]).toArray());
        return new StpFile(graph, terminals.stream().mapToInt(Integer::intValue).toArray());
    }

    private static String text(String name) {
        try (InputStream in = StpFile.class.getResourceAsStream("/checks/routing/" + name)) {
            return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
