package leat.report;

import static leat.model.plan.Parts.amps;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.cable;
import static leat.model.plan.Parts.circuit;
import static leat.model.plan.Parts.conduit;
import static leat.model.plan.Parts.controller;
import static leat.model.plan.Parts.feed;
import static leat.model.plan.Parts.inches;
import static leat.model.plan.Parts.luminaires;
import static leat.model.plan.Parts.outlet;
import static leat.model.plan.Parts.panel;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.trench;
import static leat.model.plan.Parts.valveWires;
import static leat.model.plan.Parts.watts;

import leat.model.plan.Yard;

/** The small Tern Hill with power drawn by hand: every kind of thing, laid now, later and before. */
final class TernHillPower {

    private TernHillPower() {}

    static Yard yardByHand() {
        Yard yard = TernHill.yardByHand()
                .with(
                        panel("house panel", at(54, 42)).inside("house").spareWays(4),
                        circuit("workshop")
                                .from("house panel")
                                .breaker(amps(20))
                                .groundFault(),
                        circuit("garden").from("house panel").breaker(amps(20)).groundFault(),
                        circuit("terrace").from("house panel").breaker(amps(15)),
                        feed("workshop").at(at(70, 22)).on("workshop").draws(watts(1400)),
                        controller("clock")
                                .at(at(66, 20))
                                .inside("workshop")
                                .stations(8)
                                .on("workshop"),
                        outlet("terrace outlet", at(70, 58)).on("garden").groundFault(),
                        outlet("court outlet", at(36, 84)).on("garden"),
                        feed("summer house").at(at(24, 104)).on("garden").conduitNow(),
                        luminaires("terrace lights", at(61, 59), at(65, 59), at(69, 46))
                                .on("terrace")
                                .switchAt(at(56, 52))
                                .wiresNow());
        return yard.with(
                conduit("old duct", polyline(at(56, 42), at(66, 36), at(66, 22)))
                        .size("1")
                        .existing()
                        .occupied("12", 3),
                conduit("c-garden", polyline(at(56, 50), at(58, 61), at(58, 66), at(36, 84)))
                        .size("3/4"),
                conduit("c-terrace", polyline(at(58, 61), at(69, 61), at(70, 58)))
                        .size("3/4"),
                conduit("c-summer", polyline(at(36, 84), at(34, 100), at(24, 104)))
                        .size("1"),
                conduit("c-lights", polyline(at(56, 50), at(58, 61), at(61, 59)))
                        .size("1/2"),
                conduit("c-valves", polyline(at(66, 22), at(58, 36), at(58, 66), at(23, 65)))
                        .size("3/4"),
                cable("w1", polyline(at(54, 42), at(56, 42), at(66, 36), at(66, 22), at(70, 22)))
                        .circuit("workshop")
                        .from("house panel")
                        .to("workshop")
                        .through("old duct")
                        .conductor("12"),
                cable("g1", polyline(at(54, 42), at(56, 50), at(58, 61), at(58, 66), at(36, 84)))
                        .circuit("garden")
                        .from("house panel")
                        .to("court outlet")
                        .through("c-garden")
                        .conductor("12"),
                cable("t1", polyline(at(54, 42), at(56, 50), at(58, 61), at(61, 59)))
                        .circuit("terrace")
                        .from("house panel")
                        .to("terrace lights 1")
                        .through("c-lights")
                        .conductor("14"),
                valveWires("vw1", polyline(at(66, 20), at(66, 22), at(58, 36), at(58, 66), at(23, 65), at(22, 64)))
                        .from("clock")
                        .to("back wall")
                        .through("c-valves")
                        .strands(9)
                        .conductor("18"),
                trench("P1", polyline(at(58, 61), at(58, 66), at(36, 84)))
                        .depth(inches(20))
                        .holdsConduits("c-garden"),
                trench("P2", polyline(at(36, 84), at(34, 100), at(24, 104)))
                        .depth(inches(20))
                        .holdsConduits("c-summer"));
    }
}
