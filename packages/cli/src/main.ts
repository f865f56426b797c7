import { exitCode } from './exit-code.js';
import { guarded } from './guarded.js';
import { run } from './run.js';
import type { Terminal } from './terminal.js';

const terminal: Terminal = { cwd: process.cwd(), env: process.env, stdout: process.stdout, stderr: process.stderr };

// A reader that went away, as in `boothwright check booth.booth | head`, is no reason to complain.
for (const output of [process.stdout, process.stderr])
  output.on('error', (error: NodeJS.ErrnoException) => {
    process.exit(error.code === 'EPIPE' ? process.exitCode : exitCode.misuse);
  });

process.exitCode = guarded('boothwright', terminal, () => run(process.argv.slice(2), terminal));
