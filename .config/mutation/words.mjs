/**
 * The words of Vitest that tests of calculations use (`describe`, `test`, `it`, `expect`), for the mutation tool: it
 * gathers tests once and runs single ones thousands of times, which a start of Vitest for each would make twenty
 * times slower. A word that is missing here fails at once, when the tests are gathered.
 */
import {createRequire} from 'node:module';
import {pathToFileURL} from 'node:url';
import {format} from 'node:util';

const ours = createRequire(import.meta.url);
const vitests = createRequire(ours.resolve('vitest/package.json'));
const matchers = await import(pathToFileURL(vitests.resolve('@vitest/expect')).href);
const {chai} = matchers;
chai.use(matchers.JestExtend);
chai.use(matchers.JestChaiExpect);
chai.use(matchers.JestAsymmetricMatchers);

export function expect(value, message) {
  return chai.expect(value, message);
}
Object.assign(expect, chai.expect, globalThis[matchers.ASYMMETRIC_MATCHERS_OBJECT]);
matchers.setState({assertionCalls: 0}, expect);

/** Every test gathered: `{id, name, file, run}`. The bundle of the tests and whoever runs it share this list. */
export const gathered = [];
const within = [];
let current = '';

/** What is gathered from now on stands in this file. */
export function gatherFrom(file) {
  current = file;
}

export const describe = repeated((name, body) => {
  within.push(name);
  body();
  within.pop();
});

export const test = repeated((name, run) => {
  const full = [...within, name].join(' ');
  gathered.push({id: `${current}#${full}`, name: full, file: current, run});
});

export const it = test;

function repeated(declare) {
  const each = (rows) => (name, body) => {
    rows.forEach((row, index) => {
      const words = Array.isArray(row) ? row : [row];
      declare(titled(name, row, words, index), () => body(...words));
    });
  };
  return Object.assign(declare, {each});
}

/** `%s` takes the next word of the row, `$key` a field of it; the number keeps every name its own. */
function titled(name, row, words, index) {
  const holes = (name.match(/%[sdifjoO#]/g) ?? []).length;
  const plain = format(name.replaceAll('%#', String(index)), ...words.slice(0, holes));
  return `${plain.replace(/\$(\w+)/g, (_, key) => String(row?.[key]))} (${index + 1})`;
}
