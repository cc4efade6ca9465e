// Who may import whom: the layers of the house, type imports included. A cycle anywhere fails.
const below = {
  num: [],
  geometry: ['num'],
  model: ['num', 'geometry'],
  top: ['num', 'geometry', 'model'],
  needle: ['num', 'geometry', 'model'],
  place: ['num', 'geometry', 'model', 'top', 'needle'],
  stitch: ['num', 'geometry', 'model', 'top', 'needle', 'place'],
  space: ['num', 'geometry', 'model', 'top', 'needle', 'place', 'stitch'],
  check: ['num', 'geometry', 'model', 'top', 'needle', 'place', 'stitch', 'space'],
  sew: ['num', 'geometry', 'model', 'top', 'needle', 'place', 'stitch'],
};
below.engine = Object.keys(below);
below.drawing = [...Object.keys(below)];
below.paper = [...Object.keys(below)];
below.bring = ['num', 'geometry', 'model'];
below.session = [...below.drawing, 'drawing'];
below.app = Object.keys(below);
below.cli = below.app.filter((folder) => folder !== 'session' && folder !== 'app');

const layers = Object.entries(below).map(([folder, allowed]) => ({
  name: `${folder}-reads-only-below`,
  severity: 'error',
  from: { path: `^src/${folder}/` },
  to: { path: '^src/', pathNot: [`^src/${folder}/`, ...allowed.map((name) => `^src/${name}/`)] },
}));

module.exports = {
  forbidden: [
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    { name: 'nothing-unresolved', severity: 'error', from: {}, to: { couldNotResolve: true } },
    { name: 'no-development-packages', severity: 'error', from: { path: '^src/', pathNot: '\\.test\\.tsx?$' }, to: { dependencyTypes: ['npm-dev'], dependencyTypesNot: ['type-only'], pathNot: '@fontsource|@expo-google-fonts|\\.css$' } },
    { name: 'tests-are-leaves', severity: 'error', from: { pathNot: '\\.test\\.tsx?$' }, to: { path: '\\.test\\.tsx?$' } },
    ...layers,
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'browser', 'default', 'types'] },
  },
};
