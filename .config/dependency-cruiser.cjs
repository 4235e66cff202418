/**
 * Which folder of `src/` may import from which. Imports point up one list only: a folder may use those above
 * it. Nothing above `host` touches disk, clock, environment or network, so none of Node's own modules there.
 */
const ORDER = [
  'text',
  'quantity',
  'trade',
  'spec',
  'procedure',
  'build',
  'findings',
  'adopt',
  'print',
  'sheet',
  'compare',
  'readings',
  'host',
  'tablet',
  'editor',
  'cli',
];

/** The one door between two folders that stand apart: the command that starts the language server. */
const DOOR = '^src/cli/editor[.]ts$';

/** Folders that stand beside each other in the list. */
const APART = [
  ['adopt', 'sheet', 'compare', 'readings'],
  ['tablet', 'editor', 'cli'],
];

const below = ORDER.slice(0, -1).map((folder, index) => ({
  name: `${folder}-imports-up`,
  comment: `src/${folder} may import only from folders above it.`,
  severity: 'error',
  from: {path: `^src/${folder}/`},
  to: {path: `^src/(${ORDER.slice(index + 1).join('|')})/`},
}));

const apart = APART.flatMap((group) =>
  group.map((folder) => ({
    name: `${folder}-stands-apart`,
    comment: `src/${folder} does not import from the folders beside it.`,
    severity: 'error',
    from: {path: `^src/${folder}/`, pathNot: DOOR},
    to: {path: `^src/(${group.filter((other) => other !== folder).join('|')})/`},
  })),
);

module.exports = {
  forbidden: [
    ...below,
    ...apart,
    {
      name: 'no-cycles',
      comment: 'Two files that need each other are one idea, or three.',
      severity: 'error',
      from: {path: '^src/'},
      to: {circular: true},
    },
    {
      name: 'no-disk-above-host',
      comment: 'Text in, values out: command, editor and plugin must give the same answer.',
      severity: 'error',
      from: {path: `^src/(${ORDER.slice(0, ORDER.indexOf('host')).join('|')})/`},
      to: {dependencyTypes: ['core']},
    },
    {
      name: 'no-node-in-a-browser',
      comment: 'The script of a sheet runs where there is neither disk nor Node.',
      severity: 'error',
      from: {path: '^src/tablet/'},
      to: {path: '^src/host/'},
    },
    {
      name: 'no-node-module-in-a-browser',
      comment: 'The same for what comes with Node.',
      severity: 'error',
      from: {path: '^src/tablet/'},
      to: {dependencyTypes: ['core']},
    },
    {
      name: 'face-is-last',
      comment: "The library's face is for those outside; inside, import the file that defines a thing.",
      severity: 'error',
      from: {path: '^src/[^/]+/'},
      to: {path: '^src/[^/]+[.]ts$'},
    },
    {
      name: 'known-folders-only',
      comment: 'A new folder takes its place in the list of this file first.',
      severity: 'error',
      from: {path: '^src/'},
      to: {path: '^src/[^/]+/', pathNot: `^src/(${ORDER.join('|')})/`},
    },
    {
      name: 'no-tests-in-source',
      comment: 'The package never needs its tests.',
      severity: 'error',
      from: {path: '^src/'},
      to: {path: '^tests/'},
    },
    {
      name: 'resolvable',
      comment:
        'Every import leads somewhere; mdast and hast have types and no code, and vscode is there in VS Code only.',
      severity: 'error',
      from: {path: '^src/'},
      to: {couldNotResolve: true, pathNot: '^(mdast|hast|vscode)$'},
    },
  ],
  options: {
    doNotFollow: {path: 'node_modules'},
    tsPreCompilationDeps: true,
    tsConfig: {fileName: 'tsconfig.json'},
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'types', 'default'],
      extensions: ['.ts', '.js', '.mjs', '.json'],
    },
  },
};
