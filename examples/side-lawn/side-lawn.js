const y = yard("Side lawn").with(
  traverse(at(-15, -15)).go("N 0° E", feet(60)).go("N 90° E", feet(75)).go("S 0° E", feet(60)).close(),
  lawn("lawn", rectangle(at(0, 0), feet(45), feet(30))).soil("loam"),
  paving("path", rectangle(at(0, -4), feet(45), feet(4))),
  mains("street", at(-12, -12)).staticPressure(psi(62)).flowTest(gpm(14), psi(50)).meter("meter-3_4"),
  pipe("main", polyline(at(-12, -12), at(-6, -6))).from("street").series("PVC Schedule 40").size("1 in"),
  backflow("garden").on("main").device("bfp-pvb-1").height(inches(18)),
  manifold("box", at(-6, -6)).on("main"));

const p = plan(y, heads("multi-4_9"));   // place heads, part them into zones, dig trenches, size pipes
const a = assess(p);
print(a.why("lawn/1", "flow"));          // how this figure came about
report(p);                               // drawings, schedules, findings, the document
