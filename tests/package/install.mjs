import fs from 'node:fs';
import path from 'node:path';
import { execute } from './execute.mjs';
import { pack, runtimeDependencies } from './pack.mjs';

/**
 * Lays an empty project and installs a packed package in it without a network: what the package needs at run time is packed
 * from this checkout and stands beside it, so that nothing is asked of a registry.
 */
export function installPacked({ tarball, name, folder, workspace }) {
  const project = path.join(workspace, 'project');
  fs.mkdirSync(project);
  const dependencies = { [name]: `file:${tarball}` };
  for (const [dependency, installed] of runtimeDependencies(folder)) {
    dependencies[dependency] = `file:${pack(fs.realpathSync(installed), workspace).tarball}`;
  }
  fs.writeFileSync(
    path.join(project, 'package.json'),
    JSON.stringify({ name: 'project', version: '1.0.0', private: true, type: 'module', dependencies }, null, 2),
  );
  const cache = path.join(workspace, 'empty-cache');
  execute('npm', ['install', '--offline', '--ignore-scripts', '--no-audit', '--no-fund', '--cache', cache], {
    cwd: project,
  });
  return project;
}
