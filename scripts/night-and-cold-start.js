// Does the landing stand at night, and when everything starts at once in the cold?
//   farwatt script scenarios/ferry-landing.farwatt.json scripts/night-and-cold-start.js --out results
const nights = {'by day': plan.scenario('base'), 'winter night': plan.scenario('winter night')};
const rows = [];
for (const [when, site] of Object.entries(nights)) {
  for (const corner of ['typical', 'most', 'hot', 'cold', 'hotstart']) {
    site.set('corner', corner);
    rows.push({
      when,
      corner,
      sent: site.get('gate.sent'),
      available: site.get('gate.available'),
      reserve_share: site.get('gate.reserve_share'),
      least_headroom: site.get('plan.least_headroom'),
    });
  }
}
const units = {sent: 'W', available: 'W', reserve_share: '%', least_headroom: 'V'};
table(rows, units).show();

const tightest = rows.reduce((a, b) => (b.reserve_share < a.reserve_share ? b : a));
print(`Tightest: ${tightest.when}, corner ${tightest.corner}`);
for (const [when, site] of Object.entries(nights)) {
  print(`${when}: ${site.verdict().text}`);
}
table(rows, units).save('night-and-cold-start.csv');
