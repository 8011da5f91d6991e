// How warm may the quay get before a trunk of each gauge no longer leaves the reserve we want?
//   farwatt script scenarios/ferry-landing.farwatt.json scripts/ambient-against-gauge.js --out results
const night = plan.scenario('base');
night.set('dark', true).drop('cam 4');

const heat = night.sweep({
  over: {'quay.ambient': span('-20 degC', '60 degC', '5 K'), 'trunk.gauge': ['18 AWG', '20 AWG', '22 AWG', '24 AWG']},
  read: ['gate.reserve_share'],
});

const target = plan.get('reserve_target');
const gauges = [...new Set(heat.rows().map((row) => row['trunk.gauge']))];
const answers = gauges.map((gauge) => {
  const enough = heat.rows().filter((row) => row['trunk.gauge'] === gauge && row['gate.reserve_share'] >= target);
  return {gauge, hottest: enough.length === 0 ? null : Math.max(...enough.map((row) => row['quay.ambient']))};
});
print(`Warmest air in which ${plan.text('reserve_target')} stay in reserve at night, with three cameras:`);
table(answers, {gauge: 'AWG', hottest: 'degC'}).show();
heat.save('ambient-against-gauge.csv');
heat.picture('gate.reserve_share');
