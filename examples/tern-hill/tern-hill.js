// Tern Hill: water and power of a sloping wedge of a lot, from the survey to a plan. Place, figures and prices are invented.
const copper = "copper Type L";
const plastic = "PVC Schedule 40";

const site = yard("Tern Hill").units(US).with(
  traverse(at(0, 0))
    .go("N 4°10' W", feet(150.2)).go("S 80°30' E", feet(124.0)).go("S 9°40' W", feet(128.6)).close(),
  levels("levels.csv"),
  finishedLevels("finished-levels.csv"),

  structure("house", rectangle(at(20, 46), feet(42), feet(30))),
  structure("workshop", rectangle(at(66, 30), feet(18), feet(14))),
  structure("summer house", circle(at(100, 114), feet(5))).phase(LATER),
  paving("drive", rectangle(at(67, 3), feet(12), feet(27))),
  paving("terrace", rectangle(at(64, 50), feet(24), feet(26)).without(circle(at(78, 64), feet(5)))),
  pond("pond", circle(at(78, 64), feet(5))),
  paving("boules court", rectangle(at(43, 85), feet(42), feet(13))),

  lawn("meadow", region("areas.csv", "meadow")).soil("silt loam").planting("turf grass, cool season"),
  lawn("back lawn", region("areas.csv", "back lawn")).soil("silt loam").planting("turf grass, cool season"),
  bed("raspberries", region("areas.csv", "raspberries")).soil("loam").planting("raspberries").watering(DRIP),
  bed("kitchen bed", rectangle(at(2, 52), feet(14), feet(22))).soil("loam").planting("vegetables").watering(HEADS),

  tree("hornbeam 1", at(96, 60), inches(6)), tree("hornbeam 2", at(97, 68), inches(6)),
  tree("hornbeam 3", at(98, 76), inches(6)), tree("hornbeam 4", at(99, 84), inches(6)),
  existingService("gas", "GAS", polyline(at(14, 0.4), at(22, 46))).doubt(feet(1.5)),
  existingService("sewer", "SEWER", polyline(at(50, 46), at(54, 1.6))).doubt(feet(1)),
  noDig("old well", circle(at(24, 118), feet(3))),

  mains("street", at(84, 5)).staticPressure(psi(68)).flowTest(gpm(15), psi(56)).meter("meter-3_4"),
  pipe("side run", polyline(at(84, 5), at(64.5, 8), at(64.5, 47), at(62, 47)))
    .from("street").series(copper).size("1 in").existing(),
  pipe("main", polyline(at(84, 5), at(87, 9), at(89.5, 48), at(89.5, 80), at(66, 80)))
    .from("street").series(plastic).size("1-1/4 in"),
  pipe("irrigation main", polyline(at(66, 80), at(58, 80))).from("main").series(plastic).size("1 in"),
  backflow("garden").on("irrigation main").device("bfp-rp-1").height(inches(14)),
  manifold("back wall", at(58, 80)).on("irrigation main").spareValves("spare 1", "spare 2"),
  bib("south wall", at(62, 47)).on("side run"),
  bib("terrace", at(66, 80)).on("main"),
  pipe("court branch", polyline(at(89.5, 80), at(89.5, 85))).from("main").series(plastic),
  bib("court", at(89.5, 85)).on("court branch"),
  bib("kitchen", at(17, 78)),

  dripLine("raspberry line", polyline(at(4, 143.7), at(93, 129.2))).family("dripline-2_3-0_3"),
  bubbler("hornbeam 1", at(95, 61)).family("bubbler-0_5"), bubbler("hornbeam 2", at(96, 69)).family("bubbler-0_5"),
  bubbler("hornbeam 3", at(97, 77)).family("bubbler-0_5"), bubbler("hornbeam 4", at(98, 85)).family("bubbler-0_5"),

  panel("house", at(61, 47.5)).inside("house").spareWays(4),
  conduit("old duct", polyline(at(62, 46), at(66, 42))).existing().size("1"),
  circuit("workshop").from("house").breaker(amps(20)).groundFault(),
  circuit("garden").from("house").breaker(amps(20)).groundFault(),
  circuit("summer house").from("house").breaker(amps(20)).groundFault().phase(LATER),
  feed("workshop").draws(watts(1500)).on("workshop"),
  controller("garden").inside("workshop").on("workshop"),
  outlet("terrace", at(67, 77)).on("garden"), outlet("court", at(86, 83)).on("garden"),
  luminaires("terrace", at(89, 54), at(89, 64), at(89, 74)).switchAt(at(64, 77)).on("garden").wiresNow(),
  feed("summer house").draws(watts(1200)).on("summer house").conduitNow(),

  watering().climate(climate("climate.csv")).days("Mon", "Wed", "Fri", "Sun").hours("22:00", "06:00"),
  budget().prices(prices("prices.csv")).waste(percent(10)).tax(percent(7)).contingency(percent(10)));

const finished = plan(site, heads("multi-4_9", "multi-6_1", "spray-3_7").withMostHeads(8));
const a = assess(finished);
print(a.findings());
report(finished);
