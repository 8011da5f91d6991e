// Which figures are worth measuring on site? Each input of the plan is moved a step up and down by itself.
//   farwatt script scenarios/museum-courtyard.farwatt.json scripts/which-input-matters.js
const read = args[0] ?? "'fountain switch'.reserve_share";
const effects = sensitivity({read, step: '5 %'});

print(`${read} = ${plan.text(read)}`);
effects.points.splice(8);
effects.show();
print(`Most: ${effects.rows()[0].input}; ${effects.without} inputs have no effect at all.`);
