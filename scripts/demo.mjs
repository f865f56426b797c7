// The main job on the demo booth: installs and builds what is missing, then prints what the booth will do.
// The demo booth misses some of its requirements on purpose, so the exit code is 1.
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { ensureInstalled, root, run } from './ensure-installed.mjs';

ensureInstalled();
// The bundle is made from the sources of all packages, so nothing else has to be built first.
run(process.execPath, ['packages/cli/esbuild.mjs']);
const extra = process.argv.slice(2);
const command = extra.length > 0 ? extra : ['check', 'shared/examples/tram-alcove/tram-alcove.booth'];
const result = spawnSync(process.execPath, [path.join(root, 'packages/cli/dist/boothwright.mjs'), ...command], {
  cwd: root,
  stdio: 'inherit',
});
process.exit(result.status ?? 2);
