// Writes the `exports` of @boothwright/acoustics anew from the folders of its sources; to be run when a folder is added.
import fs from 'node:fs';
import path from 'node:path';
import { expectedExports, sourceFolders } from '../tests/package/sub-paths.mjs';
import { root } from './ensure-installed.mjs';

const folder = path.join(root, 'packages/acoustics');
const file = path.join(folder, 'package.json');
const manifest = JSON.parse(fs.readFileSync(file, 'utf8'));
manifest.exports = expectedExports(sourceFolders(folder));
fs.writeFileSync(file, `${JSON.stringify(manifest, null, 2)}\n`);
