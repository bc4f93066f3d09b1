// One lawn, four sprays, one valve: everything stated by hand, nothing planned.
const y = yard("First lawn").with(
  traverse(at(-10, -10)).go("N 0° E", feet(36)).go("N 90° E", feet(36)).go("S 0° E", feet(36)).close(),
  lawn("lawn", rectangle(at(0, 0), feet(15), feet(15))).soil("loam"),

  mains("street", at(-8, -8)).staticPressure(psi(60)).flowTest(gpm(15), psi(50)).meter("meter-5_8"),
  pipe("main", polyline(at(-8, -8), at(-3, -3))).from("street").series("PVC Schedule 40").size("3/4 in"),
  backflow("garden").on("main").device("bfp-pvb-3_4").height(inches(18)),
  manifold("box", at(-3, -3)).on("main").valves("V1").device("valve-3_4"),

  spray("S1", at(0, 0)).family("spray-4_6").arc(0, 90).radius(feet(15)),
  spray("S2", at(15, 0)).family("spray-4_6").arc(270, 90).radius(feet(15)),
  spray("S3", at(15, 15)).family("spray-4_6").arc(180, 90).radius(feet(15)),
  spray("S4", at(0, 15)).family("spray-4_6").arc(90, 90).radius(feet(15)),
  zone("Z1").valve("V1").heads("S1", "S2", "S3", "S4"),

  pipe("Z1/1", polyline(at(-3, -3), at(0, 0))).from("V1").to("S1").series("PVC Schedule 40").size("3/4 in"),
  pipe("Z1/2", polyline(at(0, 0), at(15, 0))).from("Z1/1").to("S2").series("PVC Schedule 40").size("1/2 in"),
  pipe("Z1/3", polyline(at(15, 0), at(15, 15))).from("Z1/2").to("S3").series("PVC Schedule 40").size("1/2 in"),
  pipe("Z1/4", polyline(at(0, 0), at(0, 15))).from("Z1/1").to("S4").series("PVC Schedule 40").size("1/2 in"),

  trench("T1", polyline(at(-8, -8), at(-3, -3))).depth(inches(20)).holds("main"),
  trench("T2", polyline(at(-3, -3), at(0, 0))).depth(inches(12)).holds("Z1/1"),
  trench("T3", polyline(at(0, 0), at(15, 0), at(15, 15))).depth(inches(12)).holds("Z1/2", "Z1/3"),
  trench("T4", polyline(at(0, 0), at(0, 15))).depth(inches(12)).holds("Z1/4"));

const a = assess(y);
print(a.findings());
print(a.why("S3", "pressure"));
report(y);
