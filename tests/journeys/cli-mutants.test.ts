import { afterAll, expect, test } from 'vitest';
import { smallBooth } from './bad-inputs.js';
import { buildCommand, folderWith, stackLine } from './cli-runner.js';

// Every text that a user passes through while deleting a character, through the real command; a sample that spreads
// over the whole text, in batches because starting the command costs more than a text.
const command = buildCommand();
afterAll(() => command.remove());

const everyNth = 23;
const batch = 12;
const places = Array.from({ length: Math.ceil(smallBooth.length / everyNth) }, (_, index) => index * everyNth);
const batches = Array.from({ length: Math.ceil(places.length / batch) }, (_, index) =>
  places.slice(index * batch, (index + 1) * batch),
);

test.each(batches.map((at) => [at[0], at] as const))('a character less, from place %i on: no crash', (_, at) => {
  const files = Object.fromEntries(
    at.map((place) => [`without-${place}.booth`, smallBooth.slice(0, place) + smallBooth.slice(place + 1)]),
  );
  const scene = folderWith(files);
  try {
    const { code, stdout, stderr } = command.run(['check', ...Object.keys(files)], scene.folder);
    expect([0, 1]).toContain(code);
    expect(stderr).not.toMatch(stackLine);
    expect(stderr).not.toContain('error[internal]');
    // Every one of them got its report.
    for (const name of Object.keys(files)) expect(stdout).toMatch(new RegExp(`^${name}( · |$)`, 'm'));
  } finally {
    scene.remove();
  }
});
