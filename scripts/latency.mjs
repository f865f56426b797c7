// Measures our language server beside those for JSON, YAML and TypeScript in one run; see docs/benchmarks.md.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { ensureInstalled, root } from './ensure-installed.mjs';

ensureInstalled();
const { loadTypeScript } = await import('./load-typescript.mjs');
const { contenders } = await loadTypeScript('tests/bench/latency/contenders.ts');
const { measure } = await loadTypeScript('tests/bench/latency/measure.ts');
const { aims, median, quantile } = await loadTypeScript('tests/bench/latency/aims.ts');

/** `--quick` looks whether everything still works, with few keystrokes. */
const isQuick = process.argv.includes('--quick');
const sizes = [
  { thousands: 1, rounds: { coldStarts: isQuick ? 1 : 5, keystrokes: isQuick ? 5 : 40, warmUp: isQuick ? 1 : 10 } },
  { thousands: 10, rounds: { coldStarts: isQuick ? 1 : 3, keystrokes: isQuick ? 3 : 15, warmUp: isQuick ? 1 : 5 } },
];

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'latency-'));
try {
  const server = path.join(folder, 'server.cjs');
  execFileSync(process.execPath, ['esbuild.mjs', `--outdir=${folder}`], {
    cwd: path.join(root, 'packages/language-server'),
    stdio: 'inherit',
  });
  console.log(`Node ${process.versions.node}; times in ms as median (p95), memory in MiB`);
  const measured = {};
  for (const { thousands, rounds } of sizes) {
    console.log(`\n${(thousands * 1000).toLocaleString('en')} lines, ${rounds.keystrokes} keystrokes`);
    console.log(row('server', ['cold start', 'diagnostics', 'numbers', 'hover', 'completion', 'memory']));
    measured[thousands] = {};
    for (const subject of contenders({ root, folder, server }, thousands)) {
      fs.writeFileSync(path.join(folder, `document.${subject.extension}`), subject.document.text);
      const found = await measure(subject, folder, rounds);
      measured[thousands][subject.name] = found;
      const { coldStart, diagnostics, numbers, hover, completion, memory } = found;
      console.log(
        row(subject.name, [...[coldStart, diagnostics, numbers, hover, completion].map(times), told(memory)]),
      );
    }
  }
  const bundle = fs.statSync(server).size;
  const thread = fs.statSync(path.join(folder, 'assess-thread.cjs')).size;
  console.log(
    `\nbundle of our server: ${(bundle / 1000).toFixed(0)} kB; of the thread that works numbers out, which starts after it: ${(thread / 1000).toFixed(0)} kB\n`,
  );
  const missed = [];
  for (const aim of aims(measured[1].boothwright, measured[1].TypeScript, measured[10].boothwright, bundle)) {
    const isMet = aim.measured !== undefined && aim.measured <= aim.most;
    if (!isMet) missed.push(aim.what);
    const figures = `${told(aim.measured).padStart(8)} ${aim.unit.padEnd(3)}  aim: at most ${told(aim.most)} ${aim.unit}`;
    console.log(`${aim.what.padEnd(62)} ${figures}${isMet ? '' : '  MISSED'}`);
  }
  console.log(missed.length === 0 ? '\nAll aims are met.' : `\n${missed.length} aims are missed.`);
} finally {
  fs.rmSync(folder, { recursive: true, force: true });
}

function row(name, cells) {
  return [name.padEnd(12), ...cells.map((cell) => cell.padStart(17))].join(' ');
}

function times(list) {
  return list.length === 0 ? '-' : `${told(median(list))} (${told(quantile(list, 0.95))})`;
}

/** Three digits that mean something. */
function told(value) {
  if (value === undefined) return '-';
  return value < 10 ? value.toFixed(1) : value.toFixed(0);
}
