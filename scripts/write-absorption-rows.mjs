// Writes the rows of shared/open-data/absorption.json into the source of the acoustics package.
import { readFileSync, writeFileSync } from 'node:fs';

const rows = JSON.parse(readFileSync(new URL('../shared/open-data/absorption.json', import.meta.url), 'utf8'));
const target = new URL('../packages/acoustics/src/database/absorption-rows.generated.ts', import.meta.url);
const lines = rows.map((row) => `  ${JSON.stringify(row)},`);
writeFileSync(
  target,
  `// Written by scripts/write-absorption-rows.mjs out of shared/open-data/absorption.json; change it there.
import type { AbsorptionRow } from './absorption-row.js';

/** Measured rows of absorption, absorption area per person and scattering, each with where it comes from. */
export const absorptionRows: readonly AbsorptionRow[] = [
${lines.join('\n')}
];
`,
);
