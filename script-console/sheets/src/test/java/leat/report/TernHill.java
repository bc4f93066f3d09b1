package leat.report;

import static leat.model.plan.Parts.LATER;
import static leat.model.plan.Parts.at;
import static leat.model.plan.Parts.backflow;
import static leat.model.plan.Parts.bed;
import static leat.model.plan.Parts.bib;
import static leat.model.plan.Parts.circle;
import static leat.model.plan.Parts.dripLine;
import static leat.model.plan.Parts.existingService;
import static leat.model.plan.Parts.feet;
import static leat.model.plan.Parts.gpm;
import static leat.model.plan.Parts.handDig;
import static leat.model.plan.Parts.inches;
import static leat.model.plan.Parts.lawn;
import static leat.model.plan.Parts.mains;
import static leat.model.plan.Parts.manifold;
import static leat.model.plan.Parts.noDig;
import static leat.model.plan.Parts.obstacle;
import static leat.model.plan.Parts.paving;
import static leat.model.plan.Parts.pipe;
import static leat.model.plan.Parts.polygon;
import static leat.model.plan.Parts.polyline;
import static leat.model.plan.Parts.pond;
import static leat.model.plan.Parts.psi;
import static leat.model.plan.Parts.rectangle;
import static leat.model.plan.Parts.rotor;
import static leat.model.plan.Parts.setback;
import static leat.model.plan.Parts.spray;
import static leat.model.plan.Parts.structure;
import static leat.model.plan.Parts.traverse;
import static leat.model.plan.Parts.tree;
import static leat.model.plan.Parts.trench;
import static leat.model.plan.Parts.yard;
import static leat.model.plan.Parts.zone;

import java.util.ArrayList;
import java.util.List;
import leat.model.plan.Part;
import leat.model.plan.Yard;
import leat.model.site.ExistingService;

/** A small Tern Hill, drawn by hand: not a good design, but one with every kind of thing on it. */
final class TernHill {

    private static final String PVC = "PVC Schedule 40";

    private TernHill() {}

    static Yard yardByHand() {
        List<Part> parts = new ArrayList<>();
        ground(parts);
        supply(parts);
        meadow(parts);
        backLawn(parts);
        beds(parts);
        trenches(parts);
        return yard("Tern Hill").with(parts.toArray(new Part[0]));
    }

    private static void ground(List<Part> parts) {
        parts.add(traverse(at(0, 0))
                .go("N 4°10' E", feet(118.4))
                .go("S 82°30' E", feet(96.2))
                .go("S 12°00' W", feet(98.0))
                .close());
        parts.add(lawn("meadow", polygon(at(4, 4), at(82, 12), at(86, 32), at(22, 34), at(6, 34)))
                .soil("silt loam"));
        parts.add(structure("house", rectangle(at(24, 40), feet(32), feet(22))));
        parts.add(lawn("back lawn", polygon(at(12, 68), at(62, 68), at(62, 82), at(32, 82), at(32, 98), at(12, 98))));
        parts.add(paving("court", rectangle(at(36, 85), feet(42), feet(13))));
        parts.add(paving("terrace", rectangle(at(60, 44), feet(10), feet(16))));
        parts.add(pond("pond", circle(at(79, 44), feet(6))));
        parts.add(bed("raspberries", rectangle(at(84, 62), feet(9), feet(30))).planting("raspberries in three rows"));
        parts.add(bed("kitchen bed", rectangle(at(67, 66), feet(12), feet(14))));
        parts.add(structure("workshop", rectangle(at(64, 13.5), feet(12), feet(9))));
        parts.add(structure("summer house", circle(at(20, 106), feet(5))).phase(LATER));
        for (int i = 0; i < 4; i++) {
            parts.add(tree("hornbeam " + (i + 1), at(44 + 14 * i, 104 - 1.4 * i), inches(6)));
        }
        parts.add(obstacle("wall", rectangle(at(58, 62.5), feet(24), feet(0.8))));
        parts.add(existingService("gas line", ExistingService.Kind.GAS, polyline(at(60, 7), at(48, 25), at(48, 40)))
                .doubt(feet(1)));
        parts.add(existingService(
                "old feeder", ExistingService.Kind.POWER, polyline(at(56, 46), at(66, 36), at(70, 22.5))));
        parts.add(noDig("septic field", polygon(at(70, 88), at(80, 87), at(81, 97), at(71, 98)))
                .doubt(feet(1)));
        parts.add(handDig("cellar wall", rectangle(at(22, 62), feet(36), feet(3))));
        parts.add(setback("street setback", polyline(at(1, 8), at(84, 16))));
    }

    private static void supply(List<Part> parts) {
        parts.add(mains("street", at(3, 3))
                .staticPressure(psi(62))
                .flowTest(gpm(14), psi(48))
                .meter("meter-3_4"));
        parts.add(pipe("service line", polyline(at(3, 3), at(9, 37)))
                .from("street")
                .series("copper Type L")
                .size("1 in")
                .existing());
        parts.add(pipe("side run", polyline(at(9, 37), at(22, 37), at(22, 60)))
                .from("service line")
                .series("copper Type L")
                .size("3/4 in")
                .existing());
        parts.add(pipe("irrigation main", polyline(at(9, 37), at(9, 64), at(22, 64)))
                .from("service line")
                .series(PVC)
                .size("1 in"));
        parts.add(pipe("court branch", polyline(at(22, 60), at(22, 66), at(35, 84)))
                .from("side run")
                .series(PVC)
                .size("3/4 in")
                .phase(LATER));
        parts.add(backflow("vacuum breaker")
                .on("irrigation main")
                .device("bfp-pvb-1")
                .height(inches(30)));
        parts.add(bib("south wall", at(22, 44)).on("side run").draws(gpm(5)));
        parts.add(bib("court tap", at(35, 84)).on("court branch").draws(gpm(5)).phase(LATER));
        parts.add(manifold("back wall", at(22, 64))
                .on("irrigation main")
                .valves("V1", "V2", "V3", "V4", "V5")
                .spareValves("V6")
                .device("valve-1"));
    }

    private static void meadow(List<Part> parts) {
        double[][] west = {{6, 5, 5, 80}, {6, 33, 90, 85}, {26, 7.5, 276, 172}, {26, 33.5, 92, 176}};
        double[][] east = {
            {46, 9.5, 276, 172}, {46, 33, 92, 176}, {80, 13, 276, 85}, {84, 31, 180, 85}, {62, 32.5, 92, 176}
        };
        rotors(parts, "R", 1, west);
        rotors(parts, "R", 5, east);
        parts.add(zone("meadow west").valve("V1").heads("R1", "R2", "R3", "R4"));
        parts.add(zone("meadow east").valve("V2").heads("R5", "R6", "R7", "R8", "R9"));
        parts.add(run("mw1", "V1", "1 in", 22, 64, 19, 64, 19, 33));
        parts.add(run("mw2", "mw1", "3/4 in", 19, 33, 6, 33).to("R2"));
        parts.add(run("mw3", "mw1", "3/4 in", 19, 33, 26, 33.5).to("R4"));
        parts.add(run("mw4", "mw3", "3/4 in", 26, 33.5, 26, 7.5).to("R3"));
        parts.add(run("mw5", "mw4", "1/2 in", 26, 7.5, 6, 5).to("R1"));
        parts.add(run("me1", "V2", "1-1/4 in", 22, 64, 20, 64, 20, 35, 46, 35, 46, 33)
                .to("R6"));
        parts.add(run("me2", "me1", "1 in", 46, 33, 46, 9.5).to("R5"));
        parts.add(run("me3", "me1", "1 in", 46, 33, 62, 32.5).to("R9"));
        parts.add(run("me4", "me3", "3/4 in", 62, 32.5, 84, 31).to("R8"));
        parts.add(run("me5", "me4", "1/2 in", 84, 31, 80, 13).to("R7"));
    }

    private static void rotors(List<Part> parts, String letter, int first, double[][] heads) {
        for (int i = 0; i < heads.length; i++) {
            double[] head = heads[i];
            parts.add(rotor(letter + (first + i), at(head[0], head[1]))
                    .family("rotor-1_5")
                    .arc(head[2], head[3])
                    .radius(feet(24)));
        }
    }

    private static leat.model.plan.PipePart run(String name, String from, String size, double... xy) {
        var places = new leat.model.plan.Place[xy.length / 2];
        for (int i = 0; i < places.length; i++) {
            places[i] = at(xy[2 * i], xy[2 * i + 1]);
        }
        return pipe(name, polyline(places)).from(from).series(PVC).size(size);
    }

    private static void backLawn(List<Part> parts) {
        double[][] heads = {
            {12, 68, 0, 90}, {12, 83, 0, 180}, {12, 98, 90, 90}, {22, 98, 90, 180}, {32, 98, 180, 90},
            {32, 82, 0, 360}, {27, 68, 270, 180}, {42, 68, 270, 180}, {52, 68, 270, 180}, {62, 68, 270, 90},
            {62, 82, 180, 90}, {47, 82, 90, 180}, {22, 83, 0, 360}
        };
        List<String> west = new ArrayList<>();
        List<String> east = new ArrayList<>();
        for (int i = 0; i < heads.length; i++) {
            String name = "S" + (i + 1);
            parts.add(spray(name, at(heads[i][0], heads[i][1]))
                    .family("spray-4_6")
                    .arc(heads[i][2], heads[i][3])
                    .radius(feet(15)));
            (heads[i][0] < 35 ? west : east).add(name);
        }
        parts.add(zone("lawn west").valve("V3").heads(west.toArray(new String[0])));
        parts.add(zone("lawn east").valve("V4").heads(east.toArray(new String[0])));
        parts.add(run("lw1", "V3", "1-1/4 in", 22, 64, 22, 83).to("S13"));
        parts.add(run("lw2", "lw1", "3/4 in", 22, 83, 12, 83).to("S2"));
        parts.add(run("lw3", "lw2", "1/2 in", 12, 83, 12, 68).to("S1"));
        parts.add(run("lw4", "lw2", "1/2 in", 12, 83, 12, 98).to("S3"));
        parts.add(run("lw5", "lw1", "1 in", 22, 83, 32, 82).to("S6"));
        parts.add(run("lw6", "lw5", "3/4 in", 32, 82, 32, 98).to("S5"));
        parts.add(run("lw7", "lw6", "1/2 in", 32, 98, 22, 98).to("S4"));
        parts.add(run("lw8", "lw1", "1/2 in", 22, 68, 27, 68).to("S7"));
        parts.add(run("le1", "V4", "1 in", 22, 64, 23, 66, 42, 66, 42, 68).to("S8"));
        parts.add(run("le2", "le1", "3/4 in", 42, 68, 47, 82).to("S12"));
        parts.add(run("le3", "le1", "3/4 in", 42, 68, 52, 68).to("S9"));
        parts.add(run("le4", "le3", "3/4 in", 52, 68, 62, 68).to("S10"));
        parts.add(run("le5", "le4", "1/2 in", 62, 68, 62, 82).to("S11"));
    }

    private static void beds(List<Part> parts) {
        for (int i = 0; i < 3; i++) {
            parts.add(dripLine("D" + (i + 1), polyline(at(86 + 2.5 * i, 63), at(86 + 2.5 * i, 91)))
                    .family("dripline-2_0-0_3"));
        }
        parts.add(zone("raspberries").valve("V5").heads("D1", "D2", "D3"));
        parts.add(run("rb1", "V5", "3/4 in", 22, 64, 64, 64.5, 86, 61, 86, 63).to("D1"));
        parts.add(run("rb2", "rb1", "1/2 in", 86, 63, 88.5, 63).to("D2"));
        parts.add(run("rb3", "rb2", "1/2 in", 88.5, 63, 91, 63).to("D3"));
    }

    private static void trenches(List<Part> parts) {
        parts.add(trench("T1", polyline(at(9, 37), at(9, 64), at(22, 64)))
                .depth(inches(18))
                .holds("irrigation main"));
        parts.add(
                trench("T2", polyline(at(20, 64), at(20, 34))).depth(inches(12)).holds("mw1", "me1"));
        parts.add(trench("T3", polyline(at(22, 64), at(22, 83)))
                .depth(inches(12))
                .holds("lw1")
                .byHand());
        parts.add(trench("T4", polyline(at(46, 35), at(46, 9.5)))
                .depth(inches(12))
                .holds("me2"));
        parts.add(trench("T5", polyline(at(20, 35), at(46, 35), at(62, 32.5), at(84, 31)))
                .depth(inches(12))
                .holds("me1", "me3", "me4"));
    }
}
