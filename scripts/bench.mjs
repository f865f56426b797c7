// Measures the layered-wall kernel against plain C and numpy, and a whole booth against its walls alone, in one run; see
// docs/benchmarks.md.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { ensureInstalled, root } from './ensure-installed.mjs';

ensureInstalled();
const { loadTypeScript } = await import('./load-typescript.mjs');
const bench = await loadTypeScript('tests/bench/layered-walls.ts');
const rounds = 9;
const referenceEvery = 10;
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'layered-walls-'));

/** Runs a program that prints nanoseconds and then one line of values per wall. */
function runProgram(command, args) {
  const { status, stdout, stderr, error } = spawnSync(command, args, { encoding: 'utf8', maxBuffer: 2 ** 26 });
  if (error !== undefined || status !== 0) throw new Error(error?.message ?? `exit code ${status}: ${stderr}`);
  const [nanoseconds, ...rows] = stdout.trim().split('\n');
  return { nanoseconds: Number(nanoseconds), losses: rows.map((row) => row.trim().split(/\s+/).map(Number)) };
}

function worksHere(command, args) {
  const { status, error } = spawnSync(command, args, { stdio: 'ignore' });
  return error === undefined && status === 0;
}

/** Contenders in the order in which they are printed; those whose tools are missing are told and left out. */
function contenders(input) {
  const list = [];
  const source = (name) => path.join(root, 'tests/bench', name);
  const binary = path.join(folder, 'layered-wall');
  if (worksHere('gcc', ['-O3', '-o', binary, source('layered-wall.c'), '-lm'])) {
    list.push({ name: 'C, scalar, gcc -O3', run: () => runProgram(binary, [input]) });
  } else console.log('gcc is not installed or cannot build the C program: no comparison with C');
  if (worksHere('python3', ['-c', 'import numpy'])) {
    list.push({ name: 'numpy', run: () => runProgram('python3', [source('layered-wall.py'), input]) });
  } else console.log('python3 with numpy is not installed: no comparison with numpy');
  list.push({ name: 'TypeScript, fixed rule', run: bench.fixed });
  list.push({ name: 'TypeScript, adaptive rule', run: bench.adaptive });
  return list;
}

try {
  const input = path.join(folder, 'walls.txt');
  fs.writeFileSync(input, bench.inputNumbers());
  const list = contenders(input).map((contender) => ({
    ...contender,
    best: Number.POSITIVE_INFINITY,
    last: undefined,
  }));
  console.log(
    `${bench.walls.length} walls of six layers, 21 bands, best of ${rounds} rounds, contenders taking turns ...`,
  );
  for (let round = 0; round < rounds; round++) {
    for (const contender of list) {
      contender.last = contender.run();
      contender.best = Math.min(contender.best, contender.last.nanoseconds);
    }
  }
  const reference = bench.reference(referenceEvery);
  const fixed = list.find(({ name }) => name === 'TypeScript, fixed rule');
  const adaptive = list.find(({ name }) => name === 'TypeScript, adaptive rule');
  const c = list.find(({ name }) => name.startsWith('C,'));
  const decibels = (value) => (value < 1e-3 ? value.toExponential(1) : value.toFixed(3));
  console.log('');
  for (const { name, best, last } of list) {
    const error = bench.largestDifference(last, reference, referenceEvery);
    const apart =
      last === adaptive.last ? '' : `, ${decibels(bench.largestDifference(last, fixed.last))} dB from the fixed rule`;
    console.log(
      `${name.padEnd(26)} ${(best / 1e6).toFixed(1).padStart(8)} ms, ${(best / bench.walls.length / 1e3).toFixed(0).padStart(6)} us a wall; at most ${decibels(error)} dB from converged${apart}`,
    );
  }
  console.log('');
  if (c !== undefined) {
    console.log(`fixed rule, TypeScript over C: ${(fixed.best / c.best).toFixed(2)} (aim: at most 1.20)`);
  }
  console.log(`adaptive over fixed rule, TypeScript: ${(adaptive.best / fixed.best).toFixed(2)} (aim: at most 0.33)`);
} finally {
  fs.rmSync(folder, { recursive: true, force: true });
}

await wholeBooth();

/** A whole booth beside its walls alone, after an edit of a wall and after one that leaves the walls as they are. */
async function wholeBooth() {
  const booth = await loadTypeScript('tests/bench/whole-booth.ts');
  const edits = booth.specs(30);
  const same = booth.sameWalls(30);
  const median = (list) => list.toSorted((a, b) => a - b)[list.length >> 1];
  const measured = { walls: [], cold: [], wallEdit: [], otherEdit: [] };
  const booths = edits.map(booth.wallsOnly);
  // The first round only warms the code up.
  for (let round = 0; round < 4; round++) {
    const walls = booth.coldMemory(booths);
    const cold = booth.coldMemory(edits);
    const wallEdit = booth.keptMemory(edits).slice(1);
    const otherEdit = booth.keptMemory(same).slice(1);
    if (round === 0) continue;
    measured.walls.push(...walls);
    measured.cold.push(...cold);
    measured.wallEdit.push(...wallEdit);
    measured.otherEdit.push(...otherEdit);
  }
  const size = booth.sizeOf(edits[0]);
  const line = (name, list) => console.log(`${name.padEnd(44)} ${median(list).toFixed(1).padStart(6)} ms`);
  console.log(
    `\nOne booth of ${size.panels} panels and ${size.pieces} pieces with everything in it, median of ${measured.walls.length} rounds`,
  );
  line('build-ups alone', measured.walls);
  line('whole booth, with nothing remembered', measured.cold);
  line('whole booth, after an edit of its walls', measured.wallEdit);
  line('whole booth, after an edit that is no wall', measured.otherEdit);
  const ratio = median(measured.wallEdit) / median(measured.walls);
  console.log(
    `whole booth over build-ups alone: ${ratio.toFixed(1)} after an edit of a wall (aim: the whole below 50 ms)`,
  );
}
