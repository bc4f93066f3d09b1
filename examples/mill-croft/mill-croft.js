// Mill Croft: a metric yard watered with rain from a tank, from the survey to a plan. Place and figures are invented.
const pe = "PE100 SDR 11 (PN 16)";

const site = yard("Mill Croft").units(METRIC).with(
  traverse(at(0, 0))
    .go("N 2°44' W", metres(31.54)).go("N 84°30' E", metres(26.12)).go("S 4°21' E", metres(32.89)).close(),
  levels("levels.csv"),

  structure("house", rectangle(at(8, 1.5), metres(11.5), metres(8.5))),
  structure("tool shed", rectangle(at(21.2, 21), metres(3), metres(2.4))),
  structure("greenhouse", rectangle(at(-0.2, 22.2), metres(2.6), metres(4.2))).phase(LATER),
  paving("court", rectangle(at(8, 10), metres(11.5), metres(3.2))),
  paving("drive", rectangle(at(3.5, 7.2), metres(4.5), metres(6))),
  pond("mill race", region("areas.csv", "mill race")),
  obstacle("rain-water tank", circle(at(22.6, 15), metres(1.1))),

  lawn("long lawn", region("areas.csv", "long lawn")).soil("loam"),
  lawn("side lawn", region("areas.csv", "side lawn")).soil("loam"),
  lawn("front lawn", region("areas.csv", "front lawn")).soil("loam"),
  bed("currants", rectangle(at(9, 13.4), metres(10.5), metres(1.2))).planting("currants").watering(DRIP),
  bed("kitchen bed", rectangle(at(21.2, 24.6), metres(3), metres(3.6))).planting("vegetables").watering(DRIP),
  tree("pear", at(3, 23.5), millimetres(180)),
  existingService("sewer", "SEWER", polyline(at(13, 1.5), at(13, 0.7))).doubt(metres(0.3)),

  // The tank is filled from the roofs alone: nothing here is joined to the drinking water of the house.
  pump("rain pump", at(21, 17)).shutOff(bar(4.2)).duty(litresPerMinute(40), bar(3.6)),
  pipe("main", polyline(at(21, 17), at(20.4, 18.4))).from("rain pump").series(pe),
  manifold("tank wall", at(20.4, 18.4)).on("main").spareValves("spare"),
  bib("court", at(19.8, 12.6)), bib("kitchen", at(20.8, 24.4)),

  dripLine("currants 1", polyline(at(9.3, 13.8), at(19.2, 13.8))).family("dripline-2_0-0_3"),
  dripLine("currants 2", polyline(at(9.3, 14.2), at(19.2, 14.2))).family("dripline-2_0-0_3"),
  dripLine("vegetables 1", polyline(at(21.6, 25), at(21.6, 27.8))).family("dripline-2_0-0_3"),
  dripLine("vegetables 2", polyline(at(22.4, 25), at(22.4, 27.8))).family("dripline-2_0-0_3"),
  dripLine("vegetables 3", polyline(at(23.2, 25), at(23.2, 27.8))).family("dripline-2_0-0_3"));

const finished = plan(site, heads("multi-4_9", "multi-3_7", "spray-3_0"));
const a = assess(finished);
print(a.findings());
report(finished);
