package leat.calc.staking;

import java.util.Optional;
import leat.model.fault.Require;
import leat.model.geometry.Point;
import leat.model.id.Id;
import leat.model.quantity.Length;
import leat.model.site.Phase;

/**
 * One stake.
 *
 * @param label what is written on it
 * @param id    of what comes there; several stakes of a trench have the id of the trench
 * @param at    on the plan
 * @param level height of the finished grade there
 * @param tie   empty where no two marks place it well
 */
public record Stake(
        String label, StakeKind kind, Id id, Point at, Length level, Phase phase, Optional<TwoTapeTie> tie) {

    public Stake {
        Require.present("stake", "label", label);
        Require.present("stake " + label, "kind", kind);
        Require.present("stake " + label, "id", id);
        Require.present("stake " + label, "at", at);
        Require.present("stake " + label, "level", level);
        Require.present("stake " + label, "phase", phase);
        Require.present("stake " + label, "tie", tie);
    }
}
