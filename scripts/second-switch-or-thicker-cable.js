// The landing gets four more cameras. Which carries them: a second edge switch on a trunk of its own, or a thicker
// trunk? Both are tried on copies and kept as scenarios; nothing is changed until they are taken over.
//   farwatt script scenarios/ferry-landing.farwatt.json scripts/second-switch-or-thicker-cable.js
const more = [1, 2, 3, 4].map((n) => ({
  device: {id: `pier cam ${n}`, kind: 'fixed camera', zone: 'quay', class: 3, draw: '5 W', ingress: 'IP66'},
  length: `${20 + 10 * n} m`,
}));

function withCameras(site, node) {
  for (const {device, length} of more) {
    site.add('devices', device, {from: node, length, sheath: 'outdoor'});
  }
}

const asItIs = plan.scenario('base');
asItIs.set('gate.ports', 16);
withCameras(asItIs, 'gate');
asItIs.keep('four cameras more');

const thicker = plan.scenario('four cameras more');
thicker.set('trunk.gauge', '18 AWG');
thicker.keep('four cameras more, thicker trunk');

const second = plan.scenario('base');
second.set('feed.ports', 2).set('feed.budget', '180 W');
second.add(
  'switches',
  {id: 'pier', zone: 'quay', ports: 8, volts: '55 V', own_draw: '6 W', efficiency: '94 %', uplink_right: 'extended',
    grants_by: 'measured', ingress: 'IP66', coldest_rated: '-40 degC', hottest_rated: '65 degC'},
  {from: 'feed', id: 'pier trunk', zone: 'quay', length: '95 m', gauge: '22 AWG', sheath: 'outdoor', screened: true,
    leaves_building: true, surge: true},
);
withCameras(second, 'pier');
second.keep('four cameras more, second switch');

const choices = {'one switch, as it is': asItIs, 'thicker trunk': thicker, 'second switch': second};
const rows = Object.entries(choices).map(([choice, site]) => ({
  choice,
  holds: site.verdict().holds,
  least_reserve: site.get('plan.least_reserve_share'),
  lost: site.get('plan.lost'),
  failing: site.findings({level: 'fail'}).length,
}));
table(rows, {least_reserve: '%', lost: 'W'}).show();

const best = rows.filter((row) => row.failing === Math.min(...rows.map((each) => each.failing)));
best.sort((a, b) => b.least_reserve - a.least_reserve);
print(`Best: ${best[0].choice}`);
