import { readdirSync } from 'node:fs';
import * as path from 'node:path';
import Mocha from 'mocha';

/** Called by the extension host: runs every suite that was bundled beside this file and writes a JSON report. */
export async function run(): Promise<void> {
  const folder = path.dirname(__filename);
  const mocha = new Mocha({
    ui: 'bdd',
    timeout: 90_000,
    reporter: 'json',
    reporterOptions: { output: path.join(folder, 'results.json') },
  });
  for (const file of readdirSync(folder).sort()) {
    if (file.endsWith('.suite.cjs')) mocha.addFile(path.join(folder, file));
  }
  const failures = await new Promise<number>((resolve) => {
    mocha.run(resolve);
  });
  if (failures > 0) throw new Error(`${failures} tests failed in the extension host`);
}
