package leat.calc.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import leat.calc.takeoff.Joint.Arm;
import leat.calc.takeoff.Joint.Outlet;
import leat.calc.takeoff.Joint.OutletKind;
import leat.model.catalog.MaterialKind;
import leat.model.finding.Subject;
import leat.model.site.Phase;
import leat.model.water.PipeRun;

/**
 * The fittings at one joint. Of n ways that meet, n − 2 three-way fittings join them, so in a tree of pipes there is
 * always one fewer than there are outlets; a cross stands for two where four pipes meet squarely.
 */
final class JointFittings {

    private final Joint joint;
    private final Goods goods;
    private final Materials materials;
    private final double straightRad;
    private final double sharpRad;
    private final Phase phase;
    private final String why;

    JointFittings(Joint joint, Goods goods, TakeoffParameters parameters, Materials materials) {
        this.joint = joint;
        this.goods = goods;
        this.materials = materials;
        straightRad = parameters.straight().inRadians();
        sharpRad = parameters.sharp().inRadians();
        phase = newPhases().min(Comparator.naturalOrder()).orElse(Phase.NOW);
        why = why();
    }

    private Stream<Phase> newPhases() {
        return Stream.concat(
                joint.arms().stream().filter(Arm::isNew).map(arm -> arm.run().phase()),
                joint.outlets().stream().filter(Outlet::isNew).map(Outlet::phase));
    }

    /** Whether a pipe goes on through the joint in one piece. */
    boolean isUncut() {
        if (joint.ways() != 2 || joint.arms().size() != 2) {
            return false;
        }
        Arm one = joint.arms().get(0);
        Arm other = joint.arms().get(1);
        return one.run().equals(other.run()) && !isBent(one, other);
    }

    void count() {
        if (newPhases().findAny().isEmpty() || joint.arms().isEmpty() || isUncut()) {
            return;
        }
        PipeRun body = joint.arms().stream()
                .map(Arm::run)
                .max(Comparator.comparingDouble(goods::boreM))
                .orElseThrow();
        if (joint.ways() == 1) {
            add("cap", body, 1, why);
        } else if (joint.ways() == 2) {
            join(body);
        } else {
            branch(body);
        }
        outletAdapters();
        tieIn();
        leaveForLater();
    }

    private void join(PipeRun body) {
        List<Arm> arms = joint.arms();
        if (arms.size() == 1) {
            switch (joint.outlets().get(0).kind()) {
                case HEAD -> add("outlet elbow", body, 1, why);
                case BIB, MANIFOLD -> add("elbow 90", body, 1, why);
                case SOURCE, VALVE -> {
                    // straight on; the adapter is counted with the source or the valve
                }
            }
            return;
        }
        int elbows = elbows(arms.get(0), arms.get(1), body);
        PipeRun other =
                arms.get(0).run().equals(body) ? arms.get(1).run() : arms.get(0).run();
        boolean isPlain = goods.fits(body, other) && goods.isSameSize(body, other);
        if (isPlain && elbows == 0) {
            add("coupling", body, 1, why);
        }
        change(body, other, elbows == 0 ? "reducer" : "bushing");
    }

    private void branch(PipeRun body) {
        int threeWays = joint.ways() - 2;
        int heads = (int) joint.outlets().stream()
                .filter(outlet -> outlet.kind() == OutletKind.HEAD)
                .count();
        int outletTees = Math.min(heads, threeWays);
        if (isSquareCross()) {
            add("cross", body, 1, why);
        } else {
            add("outlet tee", body, outletTees, why);
            add("tee", body, threeWays - outletTees, why);
            turns(body);
        }
        joint.arms().forEach(arm -> change(body, arm.run(), "bushing"));
    }

    private boolean isSquareCross() {
        List<Arm> arms = joint.arms();
        if (arms.size() != 4 || !joint.outlets().isEmpty()) {
            return false;
        }
        List<Double> bearings = arms.stream().map(Arm::bearingRad).sorted().toList();
        for (int i = 0; i < 4; i++) {
            double cornerRad = Joint.betweenRad(bearings.get(i), bearings.get((i + 1) % 4));
            if (Math.abs(cornerRad - Math.PI / 2) >= straightRad) {
                return false;
            }
        }
        return true;
    }

    /** The two arms that are most nearly opposite go through the tee; where they bend or a branch slants, elbows help. */
    private void turns(PipeRun body) {
        List<Arm> arms = joint.arms();
        if (arms.size() < 2) {
            return;
        }
        int first = 0;
        int second = 1;
        for (int i = 0; i < arms.size(); i++) {
            for (int j = i + 1; j < arms.size(); j++) {
                if (Joint.turnRad(arms.get(i), arms.get(j)) < Joint.turnRad(arms.get(first), arms.get(second)) - 1e-9) {
                    first = i;
                    second = j;
                }
            }
        }
        elbows(arms.get(first), arms.get(second), body);
        for (int i = 0; i < arms.size(); i++) {
            if (i != first && i != second && slantRad(arms.get(first), arms.get(i)) >= straightRad) {
                add("elbow 45", arms.get(i).run(), 1, why);
            }
        }
    }

    /** By how much a branch is off the right angle to the pipe that goes through. */
    private static double slantRad(Arm through, Arm branch) {
        return Math.abs(Math.PI / 2 - Joint.betweenRad(through.bearingRad(), branch.bearingRad()));
    }

    private boolean isBent(Arm one, Arm other) {
        boolean bendsByItself = goods.isCoil(one.run()) && goods.isCoil(other.run());
        return Joint.turnRad(one, other) >= (bendsByItself ? sharpRad : straightRad);
    }

    /** Elbows by the turn: none, 45, 90, 90 and 45, or two of 90 degrees; half way between they change. */
    private int elbows(Arm one, Arm other, PipeRun body) {
        if (!isBent(one, other)) {
            return 0;
        }
        int eighths = Math.max(1, (int) Math.floor((Joint.turnRad(one, other) - sharpRad) / (Math.PI / 4)) + 2);
        add("elbow 90", body, eighths / 2, why);
        add("elbow 45", body, eighths % 2, why);
        return eighths;
    }

    /** From the fitting to a pipe of another size or make. */
    private void change(PipeRun body, PipeRun pipe, String smaller) {
        if (!goods.fits(body, pipe)) {
            String key = "adapter " + goods.size(body) + " " + goods.material(body) + " x " + goods.size(pipe) + " "
                    + goods.material(pipe);
            materials.count(phase, MaterialKind.FITTING, key, key, 1, Subject.of(joint.at()), why);
        } else if (!goods.isSameSize(body, pipe)) {
            String key = smaller + " " + goods.size(body) + " x " + goods.size(pipe) + " " + goods.material(body);
            materials.count(phase, MaterialKind.FITTING, key, key, 1, Subject.of(joint.at()), why);
        }
    }

    private void outletAdapters() {
        for (Outlet outlet : joint.outlets()) {
            if (outlet.kind() == OutletKind.SOURCE) {
                joint.arms().stream()
                        .filter(Arm::isNew)
                        .findFirst()
                        .filter(arm -> joint.arms().stream().allMatch(Arm::isNew))
                        .ifPresent(arm -> add("thread adapter", arm.run(), 1, why));
            }
        }
    }

    /** A fitting let into a pipe that lies there needs a coupling without a stop to close the gap. */
    private void tieIn() {
        List<PipeRun> through = new ArrayList<>();
        for (Arm arm : joint.arms()) {
            if (!arm.isNew() && through.contains(arm.run())) {
                add("slip coupling", arm.run(), 1, "pipe " + arm.run().id() + " is cut to let a fitting in");
            }
            through.add(arm.run());
        }
    }

    /** What is to come later is capped now and goes on from there with a coupling. */
    private void leaveForLater() {
        if (phase == Phase.LATER) {
            return;
        }
        for (Arm arm : joint.arms()) {
            if (arm.isNew() && arm.run().phase() == Phase.LATER) {
                add("cap", arm.run(), 1, "pipe " + arm.run().id() + " comes later");
                String key = goods.fitting("coupling", arm.run());
                materials.count(
                        Phase.LATER,
                        MaterialKind.FITTING,
                        key,
                        key,
                        1,
                        Subject.of(joint.at()),
                        "pipe " + arm.run().id() + " goes on from its cap");
            }
        }
    }

    private void add(String kind, PipeRun run, int count, String reason) {
        String key = goods.fitting(kind, run);
        materials.count(phase, MaterialKind.FITTING, key, key, count, Subject.of(joint.at()), reason);
    }

    private String why() {
        List<String> pipes = joint.arms().stream()
                .map(arm -> "pipe " + arm.run().id())
                .distinct()
                .toList();
        List<String> names = new ArrayList<>(pipes);
        joint.outlets()
                .forEach(outlet ->
                        names.add(outlet.of().kind() + " " + outlet.of().name()));
        if (names.size() == 1) {
            return (joint.ways() == 1 ? "end of " : "bend in ") + names.get(0);
        }
        return String.join(", ", names) + " meet";
    }
}
