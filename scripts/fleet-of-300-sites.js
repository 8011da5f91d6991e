// Many sites of one kind in one plan: which of them keep their reserve, and which trunks are too long?
//   farwatt script scenarios/orchard-packing-shed.farwatt.json scripts/fleet-of-300-sites.js 300 --out results
const sites = Number(args[0] ?? 300);
if (!Number.isInteger(sites) || sites < 1) {
  throw new Error(`How many sites? ${args[0]} is no whole number.`);
}

plan.set('reserve_target', '20 %');
for (let n = 1; n <= sites; n++) {
  const site = `site ${n}`;
  plan.add('zones', {id: site, ambient: '20 degC', hottest: `${34 + n % 9} degC`, coldest: '-15 degC', outdoor: true});
  plan.add('sources', {id: `${site} feed`, zone: site, type: 4, volts: '55 V'});
  plan.add(
    'switches',
    {id: `${site} switch`, zone: site, ports: 12, volts: '54 V', uplink_right: 'extended', grants_by: 'measured'},
    {from: `${site} feed`, id: `${site} trunk`, length: `${40 + (n * 37) % 61} m`, gauge: '23 AWG'},
  );
  for (let cam = 1; cam <= 4 + n % 6; cam++) {
    plan.add(
      'devices',
      {id: `${site} cam ${cam}`, zone: site, class: 3, draw: '6.5 W', draw_start: '8 W'},
      {from: `${site} switch`, length: `${12 + 9 * cam} m`},
    );
  }
}

const trunks = new Map(plan.rows('runs').map((run) => [run.id, run]));
const rows = plan.rows('switches')
  .filter((node) => node.id.startsWith('site '))
  .map((node) => {
    const site = node.id.replace(/ switch$/, '');
    const trunk = trunks.get(`${site} trunk`);
    return {
      site,
      trunk: trunk.length,
      cameras: node.ports_used,
      sent: node.sent,
      available: node.available,
      reserve_share: node.reserve_share,
    };
  })
  .sort((a, b) => a.reserve_share - b.reserve_share);

const target = plan.get('reserve_target');
const short = rows.filter((row) => row.reserve_share < target);
print(`${rows.length} sites, ${short.length} of them below a reserve of ${plan.text('reserve_target')}`);
const fleet = table(rows, {trunk: 'm', sent: 'W', available: 'W', reserve_share: '%'});
table(rows.slice(0, 5), {trunk: 'm', sent: 'W', available: 'W', reserve_share: '%'}).show();
fleet.save('fleet.csv');
fleet.save('fleet.xlsx');
