package leat.document;

import java.util.List;
import java.util.function.Function;

/** Short for what the sections do to every list. */
final class Lists {

    private Lists() {}

    static <A, B> List<B> map(List<A> things, Function<? super A, ? extends B> to) {
        return things.stream().<B>map(to).toList();
    }
}
