import fs from 'node:fs';
import path from 'node:path';
import { root } from './cli-runner.js';

export const smallBooth = fs.readFileSync(path.join(root, 'tests/journeys/fixtures/small-booth.booth'), 'utf8');

/** The small booth with one passage replaced. */
function broken(found: string, put: string): string {
  if (!smallBooth.includes(found)) throw new Error(`the small booth holds no "${found}"`);
  return smallBooth.replace(found, put);
}

/** One mistake each in the text of the small booth; `at` is where the message must point. */
export const badTexts: readonly { readonly name: string; readonly text: string; readonly at: string }[] = [
  { name: 'wrong-unit', text: broken('  board 12 mm\n  frame', '  board 12 kg/m3\n  frame'), at: '28:9' },
  { name: 'no-unit', text: broken('reverberation 0.5 s', 'reverberation 0.5'), at: '35:17' },
  { name: 'unknown-material', text: broken('  board 12 mm\n  frame', '  bord 12 mm\n  frame'), at: '28:3' },
  { name: 'unknown-assembly', text: broken('roof   shell', 'roof   shel'), at: '43:10' },
  { name: 'unknown-fact', text: broken('reverberation 0.5 s', 'reverberaton 0.5 s'), at: '35:3' },
  {
    name: 'unclosed-block',
    text: broken('{ fill batt 70 mm }\n  board 12 mm\n}', '{ fill batt 70 mm }\n  board 12 mm'),
    at: '27:1',
  },
  { name: 'extra-brace', text: broken('  board 12 mm\n}', '  board 12 mm\n}\n}'), at: '32:1' },
  { name: 'unclosed-title', text: broken('"double board on studs"', '"double board on studs'), at: '27:16' },
  { name: 'negative-thickness', text: broken('  board 12 mm\n  frame', '  board -12 mm\n  frame'), at: '28:9' },
  { name: 'density-no-material-has', text: broken('700 kg/m3', '700000 kg/m3'), at: '7:15' },
  { name: 'comma-for-point', text: broken('0.5 s', '0,5 s'), at: '35:17' },
  {
    name: 'levels-added',
    text: broken('require room-tone <= 30 dBA', 'require room-tone <= 20 dBA + 10 dBA'),
    at: '56:22',
  },
  { name: 'declared-twice', text: broken('let depth = 70 mm', 'let depth = 70 mm\nlet depth = 80 mm'), at: '4:5' },
  { name: 'missing-value', text: broken('require co2       <= 1000 ppm', 'require co2       <='), at: '58:19' },
];
