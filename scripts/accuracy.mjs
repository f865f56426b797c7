// Compares predictions with the measured rows of shared/open-data; writes docs/accuracy.md and its pictures, then prints
// the figures. tests/accuracy fails when the page is no longer what the comparison gives.
import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensureInstalled, root } from './ensure-installed.mjs';

ensureInstalled();
const { build } = await import('esbuild');
const outfile = path.join(root, `.cache/scripts/accuracy-${process.pid}.mjs`);
// The bundle is made from the sources of all packages, so nothing else has to be built first.
await build({
  stdin: {
    contents: "export * from './tests/accuracy/report.ts'; export * from './tests/accuracy/open-data.ts';",
    resolveDir: root,
  },
  outfile,
  bundle: true,
  platform: 'node',
  format: 'esm',
  conditions: ['boothwright-source'],
  logLevel: 'warning',
});
let report;
try {
  const { accuracyReport, readOpenData } = await import(pathToFileURL(outfile).href);
  report = accuracyReport(readOpenData(root));
} finally {
  fs.rmSync(outfile, { force: true });
}

const files = {
  'docs/accuracy.md': report.page,
  ...Object.fromEntries(Object.entries(report.pictures).map(([name, svg]) => [`docs/accuracy/${name}`, svg])),
};
for (const [name, content] of Object.entries(files)) {
  const file = path.join(root, name);
  fs.mkdirSync(path.dirname(file), { recursive: true });
  fs.writeFileSync(file, content);
  console.log(`wrote ${name}`);
}
console.log('');
console.log(report.lines.join('\n'));
