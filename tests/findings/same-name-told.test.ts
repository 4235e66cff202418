/** Uses of one wrong name that are told together, or at the definition, and those that are not. Every engine is invented. */
import {expect, it} from 'vitest';
import {book} from '../help/example.js';
import {toldOf} from '../help/found.js';

const YOKES = 'parts:\n  block: {given: true}\n  yokes: {}\n';

it.each<[title: string, engine: string, procedures: Readonly<Record<string, string>>, lines: string]>([
  [
    'a single use is no reason to rename the definition, beside another name of two uses',
    YOKES,
    {'a.md': '1. a `install: yoke`\n2. b `clean: blokk`\n3. c `inspect: blokk for cracks`\n'},
    `
unknown-item yoke: yoke is not in the specification; did you mean yokes?
  fix: Write yokes: "yokes" for "yoke"
unknown-item blokk: block is named nowhere, and every place that means it says blokk; did you mean blokk here?
  see a.md:8: blokk is named here
  see a.md:9: blokk is named here
  fix: Write blokk here, as the 2 places do: "blokk" for "block"
left-out yokes: yokes are never installed
  see a.md:7: follows from this slip: yoke is not in the specification; did you mean yokes?
  see engine.yaml:6: yokes belong in the engine
`,
  ],
  [
    'a slip of the definition is seen in the second procedure too',
    YOKES,
    {
      'a.md': '1. There is nothing to do here for now.\n',
      'b.md': '1. a `inspect: yoke for cracks`\n2. Set it on. `install: yoke`\n',
    },
    `
left-out yokes: yokes are never installed
  see engine.yaml:6: yokes belong in the engine
unknown-item yoke: yokes is named nowhere, and every place that means it says yoke; did you mean yoke here?
  see b.md:7: yoke is named here
  see b.md:8: yoke is named here
  fix: Write yoke here, as the 2 places do: "yoke" for "yokes"
`,
  ],
  [
    'a definition in quotes is left as it is',
    YOKES.replace('yokes', '"yokes"'),
    {'a.md': '1. a `inspect: yoke for cracks`\n2. b `install: yoke`\n'},
    `
unknown-item yoke: yoke is not in the specification; did you mean yokes?
  see a.md:8: here too
  fix: Write yokes at all 2 places: "yokes" for "yoke", "yokes" for "yoke"
left-out yokes: yokes are never installed
  see a.md:7: follows from this slip: yoke is not in the specification; did you mean yokes?
  see engine.yaml:6: yokes belong in the engine
`,
  ],
  [
    'an option is no item whose definition could slip',
    `options: {sail: a sail}\n${YOKES}`,
    {'a.md': '1. a `clean: block` `only: sial`\n2. b `clean: block` `only: sial`\n3. c `install: yokes`\n'},
    `
unknown-item: sial is not an option of this engine; did you mean sail?
  see a.md:8: here too
  fix: Write sail at all 2 places: "sail" for "sial", "sail" for "sial"
`,
  ],
  [
    'uses in a specification are mended in the order of its text',
    'fasteners:\n  nuts: {holds: [blokk], torque: 9 N·m, threads: dry, lock: {value: none, because: stretch}}\nparts:\n  block: {given: true}\n  yokes: {after: [blokk]}\n  lid: {closes: [face]}\nsurfaces:\n  face: {on: blokk, assembly: clean}\n',
    {'a.md': '1. a `clean: block`\n'},
    `
left-slack nuts: nuts end the build slack: no step torques them
  see engine.yaml:5: nuts must be torqued
unknown-item nuts: nothing is called blokk; did you mean block?
  see engine.yaml:8: here too
  see engine.yaml:11: here too
  fix: Write block at all 3 places: "block" for "blokk", "block" for "blokk", "block" for "blokk"
left-out yokes: yokes are never installed
  see engine.yaml:8: yokes belong in the engine
left-out lid: lid is never installed
  see engine.yaml:9: lid belongs in the engine
`,
  ],
])('%s', (_, engine, procedures, lines) => {
  expect(['', ...toldOf(book({engine, procedures}))].join('\n')).toBe(lines.trimEnd());
});
