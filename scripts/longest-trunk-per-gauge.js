// How long may the roof run be for each gauge: until the reserve is less than wanted, and until a device stays dark?
// Data has a reach of its own, whatever the power does.
//   farwatt script scenarios/orchard-packing-shed.farwatt.json scripts/longest-trunk-per-gauge.js
const reserve = "'shed switch'.reserve_share >= reserve_target";
const power = 'every(powered of devices)';

const rows = ['20 AWG', '22 AWG', '23 AWG', '24 AWG', '26 AWG'].map((gauge) => {
  const site = plan.scenario('base').set("'roof run'.gauge", gauge).set("'shed switch'.uplink_right", 'extended');
  const vary = {"'roof run'.length": ['5 m', '600 m']};
  return {
    gauge,
    reserve: site.limit({vary, holds: reserve}).farthest,
    power: site.limit({vary, holds: power}).farthest,
    data: site.get("'roof run'.reach"),
  };
});
const longest = table(rows, {reserve: 'm', power: 'm', data: 'm'});
longest.show();
longest.save('longest-trunk-per-gauge.csv');
