// Lights along a walk and round a seat: a transformer on the porch outlet, lamps of 12 V, a second set for later.
const y = yard("Garden walk").units(US).with(
  traverse(at(0, 0)).go("N 0° E", feet(70)).go("N 90° E", feet(110)).go("S 0° E", feet(70)).close(),
  structure("house", rectangle(at(4, 4), feet(34), feet(24))),
  paving("walk", rectangle(at(38, 14), feet(56), feet(4))),
  paving("seat", circle(at(98, 16), feet(5))),
  pond("lily pond", circle(at(60, 44), feet(5))),

  panel("house", at(10, 8)).inside("house").spareWays(2),
  outlet("porch", at(38, 22)).groundFault().draws(watts(150)),

  transformer("garden").rating(watts(150)).taps(volts(12), volts(13), volts(15)).pluggedInto("porch"),
  luminaires("walk", at(46, 20), at(58, 20), at(70, 20), at(82, 20), at(92, 23)).draws(watts(5)).from("garden"),
  luminaires("seat", at(104, 13), at(104, 19)).draws(watts(6)).from("garden"),
  luminaires("pond", at(54, 60), at(66, 60)).draws(watts(8)).from("garden").wiresNow());

const p = plan(y);
const a = assess(p);
print(a.findings());
print(a.why("pond 2", "voltage"));       // from the tap to the lamp that has least
print(a.why("garden", "load"));          // what the transformer gives with all of it on
report(p);
