/** The arrows between packages. A wrong one fails the build; DEVELOPERS.md says why each is as it is. */
const core = ['acoustics', 'language', 'assessment', 'presentation'];
const shells = ['cli', 'language-server', 'extension'];
const only = (from, allowed) => ({
  name: `${from}-imports-only-${allowed.length ? allowed.join('-') : 'itself'}`,
  severity: 'error',
  comment: `packages/${from} may import ${allowed.length ? allowed.join(', ') : 'no other package'}`,
  from: { path: `^packages/${from}/src` },
  to: { path: '^packages/', pathNot: `^packages/(${[from, ...allowed].join('|')})/` },
});

module.exports = {
  forbidden: [
    { name: 'no-circular', severity: 'error', from: { path: '^packages' }, to: { circular: true } },
    {
      name: 'resolvable',
      severity: 'error',
      from: { path: '^packages/[^/]+/src' },
      to: { couldNotResolve: true, pathNot: '^vscode$' },
    },
    only('acoustics', []),
    only('language', []),
    only('assessment', ['acoustics', 'language']),
    only('presentation', ['acoustics', 'language', 'assessment']),
    only('cli', core),
    only('language-server', core),
    only('extension', []),
    {
      name: 'core-imports-no-node',
      severity: 'error',
      from: { path: `^packages/(${core.join('|')})/src` },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'only-the-extension-imports-vscode',
      severity: 'error',
      from: { path: '^packages/', pathNot: '^packages/extension/' },
      to: { path: '^vscode($|-languageclient)' },
    },
    {
      name: 'no-package-imports-a-shell',
      severity: 'error',
      from: { path: `^packages/(${core.join('|')})/` },
      to: { path: `^packages/(${shells.join('|')})` },
    },
    {
      name: 'no-test-in-sources',
      severity: 'error',
      from: { path: '^packages/[^/]+/src' },
      to: { path: '/test/|^tests/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(^|/)(dist|out|\\.cache)/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['boothwright-source', 'import', 'require', 'node', 'default', 'types'],
      extensions: ['.ts', '.js', '.mjs', '.cjs', '.json'],
    },
  },
};
