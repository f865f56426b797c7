import fs from 'node:fs';
import path from 'node:path';
import { root } from '../../scripts/ensure-installed.mjs';
import { execute } from './execute.mjs';

const tsc = path.join(root, 'node_modules/typescript/bin/tsc');

/** Compiles files of a project as strictly as a user may, against the types of the installed package. */
export function compile(project, files, moduleResolution) {
  const config = path.join(project, `tsconfig.${moduleResolution.toLowerCase()}.json`);
  const compilerOptions = {
    target: 'ES2022',
    lib: ['ES2022'],
    module: moduleResolution === 'NodeNext' ? 'NodeNext' : 'ESNext',
    moduleResolution,
    types: [],
    strict: true,
    skipLibCheck: false,
    noEmit: true,
  };
  fs.writeFileSync(config, JSON.stringify({ compilerOptions, files }, null, 2));
  execute(process.execPath, [tsc, '-p', config], { cwd: project });
}
