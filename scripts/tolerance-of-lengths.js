// Lengths on drawings are never what is laid. How sure is the reserve if each is off by up to 15 %, and the air by 3 K?
//   farwatt script scenarios/ferry-landing.farwatt.json scripts/tolerance-of-lengths.js 2000
const runs = Number(args[0] ?? 10000);
plan.set('dark', true).set('trunk.length', '82 m').drop('cam 4');

const vary = {'quay.ambient': '24 degC ~ 3 K'};
for (const run of plan.rows('runs')) {
  vary[`'${run.id}'.length`] = `${run.length} m ± 15 %`;
}
const wanted = 'gate.reserve_share >= reserve_target';
const scatter = spread({vary, runs, read: ['gate.reserve_share', wanted], seed: 7});
scatter.show();

const {failing, failing_least: from, failing_most: to} = scatter.read[wanted];
const percent = (share) => `${(100 * share).toFixed(1)} %`;
print(`Below the reserve in ${percent(failing)} of ${runs} cases (between ${percent(from)} and ${percent(to)}).`);
