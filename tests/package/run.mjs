// @boothwright/acoustics as a user gets it: packed, installed in an empty project without a network, then used in Node, in a
// bundle for the browser and under a strict compiler. Ends with `package: N passed, N failed`.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensureInstalled, root } from '../../scripts/ensure-installed.mjs';

ensureInstalled();
const { bundle } = await import('./bundle.mjs');
const { compile } = await import('./compile.mjs');
const { execute } = await import('./execute.mjs');
const { installPacked } = await import('./install.mjs');
const { nodeImports } = await import('./node-imports.mjs');
const { pack } = await import('./pack.mjs');
const { check, finish, insist } = await import('./report.mjs');
const { expectedExports, sourceFolders } = await import('./sub-paths.mjs');
const { loadTypeScript } = await import('../../scripts/load-typescript.mjs');

const folder = path.join(root, 'packages/acoustics');
const manifest = JSON.parse(fs.readFileSync(path.join(folder, 'package.json'), 'utf8'));
const folders = sourceFolders(folder);
const subPaths = ['.', ...folders.map((name) => `./${name}`)];
const specifier = (subPath) => manifest.name + subPath.slice(1);
const workspace = fs.mkdtempSync(path.join(os.tmpdir(), 'boothwright-package-'));
const withoutTools = process.argv.includes('--install-only');

try {
  execute('npm', ['run', 'build', '--silent'], { cwd: folder });
  const packed = pack(folder, workspace);

  await check('every folder of the sources is a sub-path', () => {
    const wanted = expectedExports(folders);
    insist(
      JSON.stringify(manifest.exports) === JSON.stringify(wanted),
      'exports of package.json are other than the folders of src; node scripts/sub-paths.mjs writes them anew',
    );
    return `${folders.length} sub-paths`;
  });

  await check('the tarball holds code, types, sources, licence, notice and changes, and nothing else', () => {
    for (const file of [
      'package.json',
      'README.md',
      'LICENSE',
      'NOTICE',
      'CHANGELOG.md',
      'dist/index.js',
      'dist/index.d.ts',
    ]) {
      insist(packed.files.includes(file), `the tarball lacks ${file}`);
    }
    const odd = packed.files.filter(
      (file) => !/^(dist\/.+\.(js|d\.ts)(\.map)?|src\/.+\.(ts|json)|[A-Z]+(\.md)?|package\.json)$/.test(file),
    );
    insist(odd.length === 0, `the tarball holds ${odd.join(', ')}`);
    return `${packed.files.length} files, ${Math.round(packed.size / 1000)} kB`;
  });

  await check('no compiled file and no type imports a module of Node', () => {
    const found = nodeImports(path.join(folder, 'dist'));
    insist(found.length === 0, found.join('\n'));
  });

  if (!withoutTools) {
    await check('publint', async () => {
      const { publint } = await import('publint');
      const { formatMessage } = await import('publint/utils');
      const { messages } = await publint({ pkgDir: folder, strict: true, pack: 'npm' });
      insist(messages.length === 0, messages.map((message) => formatMessage(message, manifest)).join('\n'));
    });

    await check('types resolve the same way as the code (esm-only)', () => {
      const attw = path.join(root, 'node_modules/@arethetypeswrong/cli/dist/index.js');
      execute(process.execPath, [
        attw,
        packed.tarball,
        '--profile',
        'esm-only',
        '--no-emoji',
        '--no-color',
        '--format',
        'ascii',
        '--exclude-entrypoints',
        './package.json',
      ]);
    });
  }

  const project = installPacked({ tarball: packed.tarball, name: manifest.name, folder, workspace });

  await check('every sub-path loads in Node', () => {
    const lines = subPaths.map(
      (subPath, index) =>
        `import * as m${index} from '${specifier(subPath)}';\nif (Object(m${index}) !== m${index}) throw 0;`,
    );
    fs.writeFileSync(path.join(project, 'load.mjs'), `${lines.join('\n')}\nconsole.log('loaded');\n`);
    insist(execute(process.execPath, ['load.mjs'], { cwd: project }).trim() === 'loaded', 'nothing was printed');
    return `${subPaths.length} entries`;
  });

  await check('the main entry has every name of the sub-paths but those of loaders and database', async () => {
    const load = async (subPath) => {
      const { exports } = JSON.parse(
        fs.readFileSync(path.join(project, 'node_modules', manifest.name, 'package.json'), 'utf8'),
      );
      const file = path.join(project, 'node_modules', manifest.name, exports[subPath].default);
      return Object.keys(await import(pathToFileURL(file).href));
    };
    const main = new Set(await load('.'));
    const apart = ['./loaders', './database'];
    const missing = [];
    for (const subPath of subPaths) {
      for (const name of await load(subPath)) {
        if (main.has(name) === apart.includes(subPath)) missing.push(`${name} of ${subPath}`);
      }
    }
    insist(missing.length === 0, missing.join(', '));
    return `${main.size} names`;
  });

  const { collectExamples } = await loadTypeScript('packages/acoustics/test/examples/collect-examples.ts');
  const { instrumentExample } = await loadTypeScript('packages/acoustics/test/examples/instrument-example.ts');
  const { compareResult } = await loadTypeScript('packages/acoustics/test/examples/run-example.ts');
  const examples = collectExamples(path.join(folder, 'src'));

  await check('the README and every example compile strictly, NodeNext and Bundler', () => {
    const user = path.join(root, 'tests/package/user');
    for (const file of fs.readdirSync(user)) fs.copyFileSync(path.join(user, file), path.join(project, file));
    const readme = fs.readFileSync(path.join(folder, 'README.md'), 'utf8');
    fs.writeFileSync(path.join(project, 'readme.ts'), /```ts\n([\s\S]*?)```/.exec(readme)[1]);
    examples.forEach((example, index) => {
      // An example may import types alone; `export {}` keeps its names to itself.
      fs.writeFileSync(path.join(project, `example-${index}.ts`), `${example.code}export {};\n`);
    });
    const everything = subPaths.map((subPath, index) => `export * as m${index} from '${specifier(subPath)}';`);
    fs.writeFileSync(path.join(project, 'everything.ts'), `${everything.join('\n')}\n`);
    const files = fs.readdirSync(project).filter((file) => file.endsWith('.ts'));
    for (const resolution of ['NodeNext', 'Bundler']) compile(project, files, resolution);
    return `${files.length} files`;
  });

  await check('the README prints what it says and every example states what it gives', async () => {
    const { transformSync } = await import('esbuild');
    const readme = fs.readFileSync(path.join(folder, 'README.md'), 'utf8');
    fs.writeFileSync(
      path.join(project, 'readme.mjs'),
      transformSync(/```ts\n([\s\S]*?)```/.exec(readme)[1], { loader: 'ts' }).code,
    );
    const printed = execute(process.execPath, ['readme.mjs'], { cwd: project });
    insist(printed === /```text\n([\s\S]*?)```/.exec(readme)[1], `the README prints\n${printed}`);

    const wrong = [];
    for (const [index, example] of examples.entries()) {
      const { code, results } = instrumentExample(example);
      const file = path.join(project, `example-${index}.mjs`);
      fs.writeFileSync(file, transformSync(code, { loader: 'ts' }).code);
      globalThis.check = (at, evaluate) => {
        const disagreement = compareResult(results[at], evaluate);
        if (disagreement) wrong.push(`${example.file}: ${JSON.stringify(disagreement)}`);
      };
      await import(pathToFileURL(file).href);
    }
    insist(wrong.length === 0, wrong.join('\n'));
    insist(examples.length > 0, 'there is no example');
    return `${examples.length} examples`;
  });

  await check('one function makes a small bundle for the browser', async () => {
    const { bytes, text } = await bundle(`export { soundTransmissionClass } from '${manifest.name}';`, project);
    insist(bytes < 1200, `soundTransmissionClass alone takes ${bytes} bytes gzipped, expected fewer than 1200`);
    insist(!/flowResistivity|youngsModulus/.test(text), 'the bundle of a rating holds parts of the wall model');
    return `${bytes} bytes gzipped`;
  });

  await check('the bundle for the browser runs without Node', async () => {
    const vm = await import('node:vm');
    const { build } = await import('esbuild');
    const everything = subPaths
      .map((subPath, index) => `export * as m${index} from '${specifier(subPath)}';`)
      .join('\n');
    const result = await build({
      stdin: { contents: everything, resolveDir: project },
      bundle: true,
      write: false,
      format: 'iife',
      globalName: 'all',
      platform: 'browser',
      logLevel: 'silent',
    });
    // An empty context has the language alone: neither process nor Buffer nor require.
    const context = vm.createContext(Object.create(null));
    const names = vm.runInContext(`${result.outputFiles[0].text}; Object.keys(all).length`, context);
    insist(names === subPaths.length, `${names} entries came through, expected ${subPaths.length}`);
    const rating = vm.runInContext('all.m0.soundTransmissionClass(new Array(16).fill(40)).stc', context);
    insist(rating === 40, `STC of 40 dB in every band is ${rating}, expected 40`);
  });

  const budgets = JSON.parse(fs.readFileSync(path.join(folder, 'size-budgets.json'), 'utf8')).entries;
  await check('no entry is larger than its budget', async () => {
    const over = [];
    const sizes = [];
    for (const subPath of subPaths) {
      const { bytes } = await bundle(`export * from '${specifier(subPath)}';`, project);
      sizes.push(`${subPath} ${bytes}`);
      const budget = budgets[subPath];
      if (budget === undefined) over.push(`${subPath} has no budget and takes ${bytes} bytes gzipped`);
      else if (bytes > budget.gzipBytes)
        over.push(`${subPath} takes ${bytes} bytes gzipped, budget ${budget.gzipBytes}`);
    }
    const unknown = Object.keys(budgets).filter((subPath) => !subPaths.includes(subPath));
    if (unknown.length > 0) over.push(`no entry ${unknown.join(', ')}`);
    if (process.argv.includes('--sizes')) console.log(sizes.join('\n'));
    insist(over.length === 0, over.join('\n'));
    return sizes[0].replace('. ', 'all of it ').concat(' bytes gzipped');
  });
} finally {
  fs.rmSync(workspace, { recursive: true, force: true });
}
finish('package');
