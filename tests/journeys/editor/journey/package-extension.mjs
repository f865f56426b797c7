import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';

/** Packs the built extension as it would be handed out. @param {{ root: string, out: string }} folders */
export function packageExtension({ root, out }) {
  const vsix = path.join(out, 'boothwright-editor.vsix');
  fs.rmSync(vsix, { force: true });
  const packed = spawnSync(
    process.execPath,
    [
      path.join(root, 'node_modules/@vscode/vsce/vsce'),
      ...['package', '--no-dependencies', '--allow-missing-repository', '--out', vsix],
    ],
    { cwd: path.join(root, 'packages/extension'), encoding: 'utf8' },
  );
  if (packed.status !== 0) throw new Error(`The extension could not be packed:\n${packed.stdout}${packed.stderr}`);
  // What the packer prints of a large folder is only its number of files.
  const listed = spawnSync(
    process.execPath,
    [path.join(root, 'node_modules/@vscode/vsce/vsce'), 'ls', '--no-dependencies'],
    { cwd: path.join(root, 'packages/extension'), encoding: 'utf8' },
  );
  return { vsix, listing: listed.stdout, bytes: fs.statSync(vsix).size };
}
