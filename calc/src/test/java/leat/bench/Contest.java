package leat.bench;

import java.util.List;

/**
 * The entrants of a benchmark on one instance.
 *
 * @param ours   the toolkit's kernel
 * @param rivals what a user would pick instead, best first
 */
public record Contest(Entrant ours, List<Entrant> rivals) {

    public Contest {
        rivals = List.copyOf(rivals);
    }
}
