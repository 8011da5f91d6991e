// How many more cameras does the landing take before a node lacks the reserve that the plan wants?
//   farwatt script scenarios/ferry-landing.farwatt.json scripts/cameras-until-the-reserve-fails.js
plan.set('gate.ports', 48);

const rows = [];
for (const [when, site] of [['by day', plan], ['winter night', plan.scenario('winter night')]]) {
  for (const until of ['gate.reserve_share < reserve_target', 'some(not powered of devices)']) {
    const grown = site.grow({copy: 'cam 1', until, most: 40});
    rows.push({when, until, fitted: grown.fitted, stopped_by: grown.stopped_by});
  }
}
table(rows).show();
