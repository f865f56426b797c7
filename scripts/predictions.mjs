// The table of reference predictions of @boothwright/acoustics, packages/acoustics/predictions.json.
//
//     node scripts/predictions.mjs            writes it anew and says what changed against the last release
//     node scripts/predictions.mjs --check    fails when a change against the last release is not announced
//     node scripts/predictions.mjs --release  takes the table as that of the version in package.json
import fs from 'node:fs';
import path from 'node:path';
import { ensureInstalled, root } from './ensure-installed.mjs';

ensureInstalled();
const { loadTypeScript } = await import('./load-typescript.mjs');
const { changedPredictions, unannounced } = await loadTypeScript(
  'packages/acoustics/test/predictions/changed-predictions.ts',
);

const folder = path.join(root, 'packages/acoustics');
const current = path.join(folder, 'predictions.json');
const released = path.join(folder, 'predictions.released.json');
const { name, version } = JSON.parse(fs.readFileSync(path.join(folder, 'package.json'), 'utf8'));
const read = (file) => JSON.parse(fs.readFileSync(file, 'utf8'));
const write = (file, content) => fs.writeFileSync(file, `${JSON.stringify(content, null, 2)}\n`);
/** 13 digits tell any change that counts, and none that an engine makes. */
const rounded = (value) => {
  if (Array.isArray(value)) return value.map(rounded);
  return typeof value === 'number' ? Number(value.toPrecision(13)) : value;
};

const about =
  'Predictions for fixed invented inputs (test/predictions); any change is announced, see docs/releasing.md';
if (process.argv.includes('--release')) {
  write(released, { release: version, predictions: read(current).predictions });
} else if (!process.argv.includes('--check')) {
  const { predictionTable } = await loadTypeScript('packages/acoustics/test/predictions/prediction-table.ts');
  const predictions = Object.fromEntries(
    Object.entries(predictionTable())
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, value]) => [key, rounded(value)]),
  );
  write(current, { about, predictions });
}

const last = read(released);
const changed = changedPredictions(last.predictions, read(current).predictions);
const changesets = fs
  .readdirSync(path.join(root, '.changeset'))
  .filter((file) => file.endsWith('.md') && file !== 'README.md')
  .map((file) => ({ file, text: fs.readFileSync(path.join(root, '.changeset', file), 'utf8') }));
const missing = unannounced(changed, changesets, name);
for (const each of changed)
  console.log(`changed since ${last.release}: ${each}${missing.includes(each) ? ', in no changeset' : ''}`);
console.log(`${changed.length} of ${Object.keys(last.predictions).length} predictions changed since ${last.release}`);
if (process.argv.includes('--check') && missing.length > 0) {
  console.error(
    'A changed prediction is at least a minor step of the version, and a changeset names it: npm run changeset',
  );
  process.exitCode = 1;
}
