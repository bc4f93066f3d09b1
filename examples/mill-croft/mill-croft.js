// Mill Croft: a metric yard watered with rain from a tank, from the survey to a plan. Place and figures are invented.
const pe = "PE100 SDR 11 (PN 16)";

const site = yard("Mill Croft").units(METRIC).with(
  traverse(at(0, 0))
    .go("N 1°24' W", metres(24.3)).go("N 88°20' E", metres(28)).go("S 0°29' E", metres(24.51)).close(),
  levels("levels.csv"),

  structure("house", rectangle(at(9, 1.2), metres(10), metres(7))),
  structure("tool shed", rectangle(at(22.6, 15.2), metres(3), metres(2.4))),
  structure("greenhouse", rectangle(at(0.4, 16.8), metres(3), metres(4.2))).phase(LATER),
  paving("court", rectangle(at(9, 8.2), metres(10), metres(2.6))),
  paving("path", rectangle(at(7.5, 0.3), metres(1.5), metres(10.5))),
  pond("mill race", region("areas.csv", "mill race")),
  obstacle("rain-water tank", circle(at(22.8, 12.2), metres(1.1))),

  lawn("long lawn", region("areas.csv", "long lawn")).soil("loam").planting("turf grass, cool season"),
  lawn("side lawn", region("areas.csv", "side lawn")).soil("loam").planting("turf grass, cool season"),
  lawn("front lawn", region("areas.csv", "front lawn")).soil("loam").planting("turf grass, cool season"),
  bed("currants", rectangle(at(9, 11.2), metres(10), metres(1.2))).soil("loam").planting("berries").watering(DRIP),
  bed("kitchen bed", rectangle(at(22.4, 18.4), metres(3.4), metres(3.2))).soil("loam").planting("vegetables").watering(DRIP),
  tree("pear", at(2.2, 8.2), millimetres(180)),
  existingService("sewer", "SEWER", polyline(at(14, 1.2), at(14, 0.3))).doubt(metres(0.3)),

  // The tank is filled from the roofs alone: nothing here is joined to the drinking water of the house.
  pump("rain pump", at(21, 13.6)).shutOff(bar(4.2)).duty(litresPerMinute(40), bar(3.6)).lift(metres(1.8)),
  pipe("main", polyline(at(21, 13.6), at(20.8, 15))).from("rain pump").series(pe).fitted("strainer-1", "check-1"),
  manifold("tank wall", at(20.8, 15)).on("main").spareValves("spare"),
  bib("court", at(19.4, 10.9)).draws(litresPerMinute(18)), bib("kitchen", at(22, 18.8)).draws(litresPerMinute(18)),

  dripLine("currants 1", polyline(at(18.8, 11.6), at(9.2, 11.6))).family("dripline-2_0-0_3"),
  dripLine("currants 2", polyline(at(18.8, 12), at(9.2, 12))).family("dripline-2_0-0_3"),
  dripLine("vegetables 1", polyline(at(22.8, 18.6), at(22.8, 21.4))).family("dripline-2_0-0_3"),
  dripLine("vegetables 2", polyline(at(23.6, 18.6), at(23.6, 21.4))).family("dripline-2_0-0_3"),
  dripLine("vegetables 3", polyline(at(24.4, 18.6), at(24.4, 21.4))).family("dripline-2_0-0_3"),
  dripLine("vegetables 4", polyline(at(25.2, 18.6), at(25.2, 21.4))).family("dripline-2_0-0_3"),

  electricalCode(IEC_60364),
  panel("house", at(18.6, 2)).inside("house").spareWays(3),
  circuit("garden").from("house").breaker(amps(16)).groundFault(),
  circuit("pump").from("house").breaker(amps(10)).groundFault(),
  circuit("lights").from("house").breaker(amps(10)).groundFault(),
  outlet("court", at(19.2, 8.6)).on("garden"),
  outlet("rain pump", at(21.4, 13.2)).on("pump").draws(watts(900)),
  feed("greenhouse").on("garden").draws(watts(2000)).phase(LATER).conduitNow(),
  luminaires("court", at(9.4, 10.6), at(14, 10.6), at(18.6, 10.6)).switchAt(at(18.8, 8)).on("lights").draws(watts(8)).phase(LATER).wiresNow(),
  controller("garden").inside("tool shed").on("garden"),

  watering().climate(climate("climate.csv")).days("Mon", "Wed", "Fri", "Sun").hours("21:00", "06:00"),
  budget().prices(prices("prices.csv")).waste(percent(10)).tax(percent(20)).contingency(percent(10)));

const finished = plan(site, heads("multi-4_9", "multi-3_7"));
const a = assess(finished);
print(a.findings());
report(finished);
