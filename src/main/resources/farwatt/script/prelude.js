// Makes the objects of a script out of the functions that the program offers. Runs before the script, in its context;
// everything it needs is taken at the start, so that a script which changes what comes with the language harms itself
// alone.
(function (host) {
  'use strict';
  const {
    asked, get, text, explain, rows, findings, verdict, set, add, drop, scenario, keep, apply, study, print, show, save,
    picture, unknown,
  } = host;
  const parse = JSON.parse;
  const stringify = JSON.stringify;
  const isArray = Array.isArray;
  const {ownKeys, get: read} = Reflect;
  const {freeze, setPrototypeOf} = Object;
  const define = Object.defineProperty;

  class PlanError extends Error {}
  define(PlanError.prototype, 'name', {value: 'PlanError'});
  host.throwing((said) => {
    throw new PlanError(said);
  });

  // What makes objects say so when they are asked for a member they do not have. It stands behind them as their
  // prototype, so that members they do have are read as fast as any.
  function guard(what) {
    return new Proxy(freeze({}), {
      get(object, key, receiver) {
        if (typeof key === 'symbol' || key in object || key === 'then' || key === 'toJSON') {
          return read(object, key, receiver);
        }
        return unknown(what, key, ...known(receiver));
      },
    });
  }

  function loud(target, what) {
    return setPrototypeOf(target, guard(what));
  }

  function allLoud(list, what) {
    const behind = guard(what);
    for (let i = 0; i < list.length; i++) {
      setPrototypeOf(list[i], behind);
    }
    return list;
  }

  function known(object) {
    const names = new Set(ownKeys(object).filter((key) => typeof key === 'string'));
    return [...names];
  }

  function hidden(target, members) {
    for (const name of Object.keys(members)) {
      define(target, name, {value: members[name], enumerable: false, configurable: true, writable: true});
    }
    return target;
  }

  // Plain data with three functions that no loop over its members sees.
  function result(data) {
    const self = hidden(data, {
      show: () => show(data),
      save: (name) => save(data, name),
      picture: (column, name) => picture(data, column, name),
      rows: () => allLoud(data.points.map((point) => {
        const row = {};
        data.columns.forEach((column, at) => {
          row[column.name] = point[at];
        });
        return row;
      }), 'this row'),
    });
    return loud(self, 'this result');
  }

  function table(list, units = {}) {
    const names = [];
    if (!isArray(list)) {
      throw new PlanError('table needs a list of objects, such as table(plan.rows("devices")).');
    }
    for (const row of list) {
      for (const name of Object.keys(row)) {
        if (!names.includes(name)) {
          names.push(name);
        }
      }
    }
    for (const name of Object.keys(units)) {
      if (!names.includes(name)) {
        unknown("this table", name, ...names);
      }
    }
    return result({
      columns: names.map((name) => ({name, unit: name in units ? units[name] : ''})),
      points: list.map((row) => names.map((name) => (Object.hasOwn(row, name) ? row[name] : null))),
    });
  }

  function explained(tree) {
    tree.inputs.forEach(explained);
    return hidden(tree, {show: () => print(lines(tree, '').join('\n'))});
  }

  function lines(tree, indent) {
    const own = `${indent}${tree.title} = ${tree.value}${tree.how ? `  (${tree.how})` : ''}`;
    const more = tree.more > 0 ? [`${indent}  and ${tree.more} more`] : [];
    return [own, ...tree.inputs.flatMap((input) => lines(input, `${indent}  `)), ...more];
  }

  const plans = new WeakSet();

  function planOf(inner) {
    const self = {
      set(path, value) {
        set(inner, path, value);
        return plan;
      },
      get: (expression, otherwise) => get(inner, expression, otherwise),
      text: (expression) => text(inner, expression),
      explain: (expression) => loud(explained(parse(explain(inner, expression))), 'this explanation'),
      add(table, row, run) {
        add(inner, table, row, run);
        return plan;
      },
      drop(id) {
        drop(inner, id);
        return plan;
      },
      rows: (table) => allLoud(parse(rows(inner, table)), `a row of ${table}`),
      findings: (filter) => allLoud(parse(findings(inner, filter)), 'a finding'),
      verdict: () => loud(parse(verdict(inner)), 'the verdict'),
      scenario: (id) => planOf(scenario(inner, id)),
      keep(name) {
        keep(inner, name);
      },
      apply() {
        apply(inner);
      },
    };
    for (const kind of ['sweep', 'grow', 'limit', 'spread', 'sensitivity', 'room']) {
      self[kind] = (options) => result(parse(study(inner, kind, options)));
    }
    const plan = freeze(loud(self, 'plan'));
    plans.add(plan);
    return plan;
  }

  // How a value is printed.
  function shown(value, depth) {
    switch (typeof value) {
      case 'string': return depth === 0 ? value : stringify(value);
      case 'number': return Number.isFinite(value) ? String(Number(value.toPrecision(12))) : 'no number';
      case 'function': return `function ${value.name}`;
      case 'object': return value === null ? 'nothing' : structure(value, depth);
      case 'undefined': return 'nothing';
      default: return String(value);
    }
  }

  function structure(value, depth) {
    if (value instanceof Error) {
      return value.message;
    }
    if (plans.has(value)) {
      return 'a plan';
    }
    if (depth > 4) {
      return isArray(value) ? '[…]' : '{…}';
    }
    if (isArray(value)) {
      const some = value.slice(0, 200).map((each) => shown(each, depth + 1));
      return `[${some.join(', ')}${value.length > 200 ? `, and ${value.length - 200} more` : ''}]`;
    }
    if (value instanceof Map || value instanceof Set) {
      return structure([...value], depth);
    }
    const parts = Object.keys(value).map((key) => `${key}: ${shown(value[key], depth + 1)}`);
    return `{${parts.join(', ')}}`;
  }

  const plan = planOf(host.plan);
  const say = (...values) => print(values.map((value) => shown(value, 0)).join(' '));
  const globals = {
    plan,
    print: say,
    console: Object.freeze({log: say}),
    table,
    span: (from, to, by) => asked(from, to, by),
    args: Object.freeze([...host.args]),
  };
  for (const kind of ['sweep', 'grow', 'limit', 'spread', 'sensitivity', 'room', 'keep', 'apply']) {
    globals[kind] = plan[kind];
  }
  hidden(globalThis, globals);
  return (value) => (value === undefined ? '' : shown(value, 0));
})
