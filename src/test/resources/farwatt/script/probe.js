// Tries every way out of the sandbox that we could think of. Each attempt has to throw, or to give nothing; what it
// gives else is a way out and is printed.

// Objects among these, and behind these, that the language did not make for scripts.
const strange = (list) => {
  const seen = new Set();
  const odd = [];
  const look = (value, path) => {
    if (value === null || (typeof value !== 'object' && typeof value !== 'function') || seen.has(value)) {
      return;
    }
    seen.add(value);
    const name = Object.prototype.toString.call(value);
    if (/foreign|Host|Java|Native/i.test(name)) {
      odd.push(`${path} is ${name}`);
      return;
    }
    if (typeof value === 'object' && !(value instanceof Object) && Object.getPrototypeOf(value) !== null) {
      odd.push(`${path} is of another world`);
    }
    for (const key of Reflect.ownKeys(value)) {
      const member = Reflect.getOwnPropertyDescriptor(value, key);
      if (member && 'value' in member) {
        look(member.value, `${path}.${String(key)}`);
      }
    }
    look(Object.getPrototypeOf(value), `${path}.prototype`);
  };
  list.forEach((value, at) => look(value, String(at)));
  return odd.length > 0 ? odd.join() : undefined;
};

const attempts = {
  java: () => Java,
  javaType: () => Java.type('java.lang.System'),
  packages: () => Packages,
  javaPackage: () => java.lang.System,
  polyglot: () => Polyglot.eval('js', '1'),
  polyglotImport: () => Polyglot.import('x'),
  graal: () => Graal,
  load: () => load('SECRET'),
  loadWithNewGlobal: () => loadWithNewGlobal('SECRET'),
  read: () => read('SECRET'),
  readFully: () => readFully('SECRET'),
  readLine: () => readline(),
  readBuffer: () => readbuffer('SECRET'),
  require: () => require('fs'),
  process: () => process.env,
  quit: () => quit(),
  exit: () => exit(1),
  fetch: () => fetch('http://127.0.0.1/'),
  request: () => new XMLHttpRequest(),
  socket: () => new WebSocket('ws://127.0.0.1/'),
  worker: () => new Worker('SECRET'),
  webAssembly: () => WebAssembly,
  timer: () => setTimeout,
  sharedMemory: () => new SharedArrayBuffer(8),
  performance: () => performance.now(),
  globalArguments: () => arguments,
  printErr: () => printErr('x'),
  evalLoad: () => (0, eval)('load')('SECRET'),
  functionThis: () => Function('return typeof this === "undefined" || this === globalThis ? load : this')(),
  hostClass: () => plan.set.getClass(),
  constructorWalk: () => plan.set.constructor('return Java')(),
  deepWalk: () => print.constructor.constructor('return process')(),
  errorWalk: () => {
    try {
      plan.get('nothing.there');
    } catch (e) {
      return e.getClass || e.javaException || e.getStackTrace || e.cause || e.constructor.constructor('return Java')();
    }
  },
  members: () => {
    const found = [];
    for (const key of Reflect.ownKeys(plan)) {
      const member = Reflect.get(plan, key);
      if (typeof member === 'function') {
        for (const own of Reflect.ownKeys(member)) {
          if (!['length', 'name', 'prototype', 'arguments', 'caller'].includes(own)) {
            found.push(`${String(key)}.${String(own)}`);
          }
        }
      } else {
        found.push(String(key));
      }
    }
    return found.length > 0 ? found.join() : undefined;
  },
  inner: () => plan.inner || undefined,
  innerByTrap: () => {
    let caught;
    const original = Map.prototype.get;
    Object.defineProperty(Object.prototype, 'throwing', {get() { caught = this; return undefined; }, configurable: true});
    plan.rows('zones');
    delete Object.prototype.throwing;
    Map.prototype.get = original;
    return caught;
  },
  innerByCall: () => {
    let caught;
    const call = Function.prototype.call;
    const apply = Function.prototype.apply;
    Function.prototype.call = function (...all) { caught = all; return Reflect.apply(this, all[0], all.slice(1)); };
    Function.prototype.apply = function (...all) { caught = all; return Reflect.apply(this, all[0], all[1] || []); };
    try {
      plan.get('trunk.length');
      plan.rows('zones');
      print;
    } finally {
      Function.prototype.call = call;
      Function.prototype.apply = apply;
    }
    return caught;
  },
  innerBySymbol: () => {
    const selves = [];
    const original = String.prototype[Symbol.iterator];
    const list = Array.prototype[Symbol.iterator];
    String.prototype[Symbol.iterator] = function () { selves.push(this); return Reflect.apply(original, this, []); };
    Array.prototype[Symbol.iterator] = function () { selves.push(...Object.values(this)); return Reflect.apply(list, this, []); };
    try {
      plan.text('trunk.length');
      plan.rows('zones')[0].nothing;
    } catch (e) {
      selves.push(e);
    } finally {
      String.prototype[Symbol.iterator] = original;
      Array.prototype[Symbol.iterator] = list;
    }
    return strange(selves);
  },
  innerByMethods: () => {
    const selves = [];
    const kept = [];
    for (const proto of [Array.prototype, Object, Set.prototype, Map.prototype, WeakSet.prototype, Number, JSON, Reflect]) {
      for (const name of Object.getOwnPropertyNames(proto)) {
        const member = Object.getOwnPropertyDescriptor(proto, name);
        if (typeof member.value === 'function' && member.writable && name !== 'constructor' && name !== 'push') {
          kept.push([proto, name, member.value]);
        }
      }
    }
    const call = Reflect.apply;
    const push = Array.prototype.push;
    for (const [proto, name, original] of kept) {
      proto[name] = function (...all) { call(push, selves, [this]); call(push, selves, all); return call(original, this, all); };
    }
    try {
      plan.rows('zones');
      plan.findings({level: 'fail'});
      plan.explain('trunk.length');
      table([{a: 1}]).rows();
      sweep({over: {dark: [true, false]}, read: ['plan.lost']});
      print;
    } finally {
      for (const [proto, name, original] of kept) {
        proto[name] = original;
      }
    }
    return strange(selves);
  },
  innerByArguments: () => {
    const seen = [];
    const spy = new Proxy({}, {
      get(target, key, receiver) { seen.push(receiver); return key === 'level' ? 'fail' : undefined; },
      has: () => true,
      ownKeys(target) { seen.push(target); return ['level']; },
      getOwnPropertyDescriptor: () => ({value: 'fail', enumerable: true, configurable: true}),
    });
    plan.findings(spy);
    try { plan.set('trunk.length', {valueOf() { seen.push(this); return 1; }, toString() { seen.push(this); return '1 m'; }}); } catch (e) { seen.push(e); }
    try { plan.set({[Symbol.toPrimitive]() { seen.push(this); return 'trunk.length'; }}, '1 m'); } catch (e) { seen.push(e); }
    return strange(seen);
  },
  stackTraces: () => {
    const seen = [];
    Error.prepareStackTrace = (e, frames) => {
      for (const frame of frames) {
        seen.push(frame.getThis(), frame.getFunction());
      }
      return frames;
    };
    try {
      for (const wrong of [() => plan.get('nothing.there'), () => plan.rows('zones')[0].nothing, () => table(1)]) {
        try { wrong(); } catch (e) { seen.push(e.stack); }
      }
    } finally {
      delete Error.prepareStackTrace;
    }
    const files = seen.flat().filter((each) => String(each).includes('farwatt:'));
    return files.length > 0 ? files.join() : strange(seen.filter((each) => typeof each === 'object'));
  },
  callers: () => plan.set.caller || plan.set.arguments,
  construct: () => new plan.set('trunk.length', '1 m'),
  reflectConstruct: () => Reflect.construct(plan.get, [], Object),
  guardBehind: () => {
    const behind = Object.getPrototypeOf(plan);
    Reflect.set(behind, 'way', 1);
    Reflect.defineProperty(behind, 'way', {value: 1});
    return Reflect.has(plan, 'way') || Reflect.setPrototypeOf(behind, {way: 1}) || strange([behind]);
  },
  planMember: () => { plan.set = 1; return plan.set === 1 ? 'set' : undefined; },
  functionKinds: () => {
    const kinds = [function () {}, function* () {}, async () => {}, async function* () {}];
    const names = ['Java', 'Polyglot', 'Graal', 'load', 'process', 'require', 'Packages', 'Debug'];
    return kinds.flatMap((kind) => names.filter((name) => {
      const made = kind.constructor(`return typeof ${name}`);
      const gave = made();
      return typeof gave === 'string' && gave !== 'undefined';
    })).join() || undefined;
  },
  unknownGlobals: () => {
    const known = new Set(`Object Function Array String Date Number Boolean RegExp Math JSON NaN Infinity undefined isNaN
      isFinite parseFloat parseInt encodeURI encodeURIComponent decodeURI decodeURIComponent eval escape unescape Error
      EvalError RangeError ReferenceError SyntaxError TypeError URIError AggregateError ArrayBuffer Int8Array Uint8Array
      Uint8ClampedArray Int16Array Uint16Array Int32Array Uint32Array Float32Array Float64Array BigInt64Array
      BigUint64Array Float16Array DataView BigInt Map Set WeakMap WeakSet Symbol Reflect Proxy Promise Iterator Atomics
      globalThis WeakRef FinalizationRegistry Intl plan print console table span args sweep grow limit spread
      sensitivity room keep apply`.split(/\s+/));
    return Object.getOwnPropertyNames(globalThis).filter((name) => !known.has(name)).join() || undefined;
  },
  resultsOfStudies: () => strange([
    plan.rows('devices'), plan.findings(), plan.verdict(), plan.explain('gate.available'), args,
    sweep({over: {dark: [true, false]}, read: ['plan.lost', 'gate.bound_by']}),
    sensitivity({read: 'plan.lost'}), room(), grow({copy: 'cam 1', until: 'dark', most: 1}),
    limit({vary: {'trunk.length': ['1 m', '200 m']}, holds: 'gate.reserve_share > 20 %'}),
    spread({vary: {'trunk.length': '95 m ± 5 %'}, runs: 10, read: ['plan.lost']}),
  ]),
  resultsByUse: () => {
    const rows = plan.rows('devices');
    const used = [
      ...rows, {...rows[0]}, ...rows.map((row) => row), ...rows.slice().sort((a, b) => b.watts - a.watts),
      Object.keys(rows[0]), Object.entries(rows[0]), Object.getOwnPropertyDescriptors(rows[0]), JSON.parse(JSON.stringify(rows)),
    ];
    if (JSON.stringify(rows[0]) !== JSON.stringify({...rows[0]}) || rows.some((row) => Object.values(row).includes(undefined))) {
      return 'rows are not what they say';
    }
    return strange(used);
  },
  sourceOfOurs: () => (String(plan.set) + String(print) + String(table)).includes('inner') ? String(plan.set) : undefined,
  deepRecursion: () => {
    let deep = 0;
    const down = () => { deep++; down(); };
    try { down(); } catch (e) { return e instanceof RangeError && deep > 100 ? undefined : String(e); }
    return 'no end';
  },
  deepJson: () => { JSON.parse('['.repeat(1e6)); return 'read'; },
  hugeString: () => { 'x'.repeat(2 ** 31); return 'made'; },
  hugeArray: () => { new Array(2 ** 32); return 'made'; },
  saveOutside: () => table([{a: 1}]).save('../written.csv') || 'saved outside',
  saveAbsolute: () => table([{a: 1}]).save('OUT') || 'saved outside',
  saveBackslash: () => table([{a: 1}]).save('..\\written.csv') || 'saved outside',
  saveHidden: () => table([{a: 1}]).save('.written.csv') || 'saved outside',
  saveDevice: () => table([{a: 1}]).save('con.csv/..') || 'saved outside',
  saveLong: () => table([{a: 1}]).save('a'.repeat(5000) + '.csv') || 'saved outside',
  saveNull: () => table([{a: 1}]).save('a\0.csv') || 'saved outside',
};

const imports = [
  'SECRET', 'file://SECRET', '../secret.js', './../secret.js', './link.js', './plain.txt', '/etc/passwd', 'fs', 'node:fs',
  'http://127.0.0.1/a.js', 'https://127.0.0.1/a.js', 'data:text/javascript,export const secret = 1', './', '.', './own/../../secret.js', '%2e%2e/secret.js', './probe.js/../../secret.js', 'file:../secret.js', 'jar:file:SECRET',
  'polyglot', 'java:java.lang.System', '', ' ', '\0',
];

const found = [];
let tried = 0;
for (const [name, attempt] of Object.entries(attempts)) {
  tried++;
  try {
    const gave = attempt();
    if (gave !== undefined) {
      found.push(`${name}: ${String(gave)}`);
    }
  } catch (e) {
    if (!(e instanceof Error)) {
      found.push(`${name} threw ${String(e)}`);
    }
  }
}

// whoever is told of an import has to be told by the language's own promises
const AsyncFunction = (async () => {}).constructor;
const others = [
  AsyncFunction('return import("SECRET")'), AsyncFunction('return import("../secret.js")'),
  () => new Function('return import("../secret.js")')(), () => (0, eval)('import("../secret.js")'),
];

Promise.allSettled([...imports.map((name) => import(name)), ...others.map((other) => other())]).then((ends) => {
  ends.forEach((end, at) => {
    tried++;
    if (end.status === 'fulfilled') {
      found.push(`import ${at < imports.length ? imports[at] : others[at - imports.length]}`);
    }
  });
  print(`tried ${tried} ways: ${found.length === 0 ? 'found nothing' : found.join('; ')}`);
});
