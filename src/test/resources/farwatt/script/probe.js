// Tries every way out of the sandbox that we could think of. Each attempt has to throw, or to give nothing; what it
// gives else is a way out and is printed.
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
    let caught;
    String.prototype[Symbol.iterator] = new Proxy(String.prototype[Symbol.iterator], {
      apply(target, self, all) { caught = caught || (typeof self === 'object' ? undefined : undefined); return Reflect.apply(target, self, all); },
    });
    plan.text('trunk.length');
    return caught;
  },
  saveOutside: () => table([{a: 1}]).save('../written.csv') || 'saved outside',
  saveAbsolute: () => table([{a: 1}]).save('OUT') || 'saved outside',
  saveBackslash: () => table([{a: 1}]).save('..\\written.csv') || 'saved outside',
  saveHidden: () => table([{a: 1}]).save('.written.csv') || 'saved outside',
  saveNull: () => table([{a: 1}]).save('a\0.csv') || 'saved outside',
};

const imports = [
  'SECRET', 'file://SECRET', '../secret.js', './../secret.js', './link.js', './plain.txt', '/etc/passwd', 'fs', 'node:fs',
  'http://127.0.0.1/a.js', 'https://127.0.0.1/a.js', 'data:text/javascript,export const secret = 1', './', '.',
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

Promise.allSettled(imports.map((name) => import(name))).then((ends) => {
  ends.forEach((end, at) => {
    tried++;
    if (end.status === 'fulfilled') {
      found.push(`import ${imports[at]}`);
    }
  });
  print(`tried ${tried} ways: ${found.length === 0 ? 'found nothing' : found.join('; ')}`);
});
