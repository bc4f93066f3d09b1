package leat.calc.digging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leat.calc.digging.internal.Volumes;
import leat.model.quantity.Count;
import leat.model.quantity.Length;

/**
 * How things lie in one trench: in layers, the deepest at the bottom, in each layer beside each other. Of all ways to part
 * them into layers the one with the fewest is taken that is nearly as narrow as the narrowest.
 *
 * @param layers lowest first
 * @param widthM that the widest layer needs with its room; 0 for an empty trench
 * @param bedM   below the lowest layer
 */
record Arrangement(List<Layer> layers, double widthM, double bedM) {

    /** One more layer is worth its trouble when it makes the trench narrower by this; common practice, no source. */
    private static final double WORTH_A_LAYER_M = 0.1;

    /** Absorbs rounding where a cover is kept to the last digit. */
    private static final double ROUNDING_M = 1e-9;

    /** More kinds of depth than this are not tried apart: the deepest then share the bottom. */
    private static final int MOST_GROUPS = 10;

    private static final Comparator<Laid> DEEPEST_FIRST = Comparator.comparingDouble((Laid one) -> -one.coverM())
            .thenComparing(one -> !one.isPower())
            .thenComparing(Laid::id);

    /**
     * Things beside each other, power on one side.
     *
     * @param bottomM depth of their underside below finished grade
     */
    record Layer(List<Laid> things, double bottomM) {

        double widthM(Spacing spacing) {
            double sumM = spacing.roomM();
            for (int i = 0; i < things.size(); i++) {
                sumM += things.get(i).outsideM();
                sumM += i > 0 ? spacing.between(things.get(i - 1), things.get(i)) : 0;
            }
            return sumM;
        }

        double thickestM() {
            return things.stream().mapToDouble(Laid::outsideM).max().orElse(0);
        }

        private boolean keepsCovers() {
            return things.stream().allMatch(one -> one.reachM() <= bottomM + ROUNDING_M);
        }
    }

    static Arrangement of(List<Laid> things, double depthM, Spacing spacing) {
        List<List<Laid>> groups = groups(things);
        if (groups.isEmpty()) {
            return new Arrangement(List.of(), 0, 0);
        }
        List<Arrangement> possible = new ArrayList<>();
        int cuts = Math.min(groups.size(), MOST_GROUPS) - 1;
        for (int split = 0; split < 1 << cuts; split++) {
            Arrangement one = split(groups, split, depthM, spacing);
            if (one.layers().stream().skip(1).allMatch(Layer::keepsCovers)) {
                possible.add(one);
            }
        }
        double narrowestM =
                possible.stream().mapToDouble(Arrangement::widthM).min().orElseThrow(); // one layer always can be
        return possible.stream()
                .filter(one -> one.widthM() < narrowestM + WORTH_A_LAYER_M)
                .min(Comparator.comparingInt((Arrangement one) -> one.layers().size())
                        .thenComparingDouble(Arrangement::widthM))
                .orElseThrow();
    }

    /** Things that want the same cover and are all power or all not: they always lie beside each other. */
    private static List<List<Laid>> groups(List<Laid> things) {
        List<List<Laid>> groups = new ArrayList<>();
        for (Laid one : things.stream().sorted(DEEPEST_FIRST).toList()) {
            List<Laid> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
            if (!last.isEmpty()
                    && last.get(0).coverM() == one.coverM()
                    && last.get(0).isPower() == one.isPower()) {
                last.add(one);
            } else {
                groups.add(new ArrayList<>(List.of(one)));
            }
        }
        return groups;
    }

    /** @param split a bit for each gap between groups, set where a new layer begins; the last gap is the lowest bit */
    private static Arrangement split(List<List<Laid>> groups, int split, double depthM, Spacing spacing) {
        List<List<Laid>> parted = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            boolean begins = i == 0 || (split >> (groups.size() - 1 - i) & 1) == 1;
            if (begins) {
                parted.add(new ArrayList<>());
            }
            parted.get(parted.size() - 1).addAll(groups.get(i));
        }
        parted.forEach(layer -> layer.sort(Comparator.comparing((Laid one) -> !one.isPower())
                .thenComparing(Laid::kind)
                .thenComparing(Laid::id)));
        double lowestM = parted.get(0).stream().mapToDouble(Laid::reachM).max().orElse(0);
        double bedM = Math.max(0, Math.min(spacing.bedM(), depthM - lowestM));
        List<Layer> layers = new ArrayList<>();
        double bottomM = depthM - bedM;
        for (List<Laid> things : parted) {
            if (!layers.isEmpty()) {
                Layer below = layers.get(layers.size() - 1);
                bottomM = below.bottomM() - below.thickestM() - clearM(below.things(), things, spacing);
            }
            layers.add(new Layer(List.copyOf(things), bottomM));
        }
        double widthM = layers.stream()
                .mapToDouble(layer -> layer.widthM(spacing))
                .max()
                .orElse(0);
        return new Arrangement(List.copyOf(layers), widthM, bedM);
    }

    private static double clearM(List<Laid> below, List<Laid> above, Spacing spacing) {
        return below.stream()
                .flatMapToDouble(one -> above.stream().mapToDouble(other -> spacing.between(one, other)))
                .max()
                .orElse(0);
    }

    /** Everything with its layer and its depth, lowest first. */
    List<LaidDepth> depths() {
        List<LaidDepth> depths = new ArrayList<>();
        for (int i = 0; i < layers.size(); i++) {
            for (Laid one : layers.get(i).things()) {
                depths.add(new LaidDepth(
                        one.id(),
                        one.kind(),
                        one.phase(),
                        Count.of(i + 1),
                        new Length(one.outsideM()),
                        new Length(layers.get(i).bottomM() - one.outsideM()),
                        new Length(one.coverM())));
            }
        }
        return List.copyOf(depths);
    }

    /** Volume of the bed: below the lowest layer, around each layer, and as much above it as below the lowest. */
    double beddingM3(double lengthM, double trenchWidthM) {
        double sumM3 = 0;
        for (int i = 0; i < layers.size(); i++) {
            double belowM = i == 0 ? bedM : 0; // an upper layer lies on earth that was tamped
            double[] outsidesM =
                    layers.get(i).things().stream().mapToDouble(Laid::outsideM).toArray();
            sumM3 += Volumes.bedM3(lengthM, trenchWidthM, belowM, bedM, outsidesM);
        }
        return sumM3;
    }

    double thingsM3(double lengthM) {
        return layers.stream()
                .flatMap(layer -> layer.things().stream())
                .mapToDouble(one -> Volumes.roundM3(lengthM, one.outsideM()))
                .sum();
    }
}
