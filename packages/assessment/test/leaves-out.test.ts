import { expect, it } from 'vitest';
import { leavesOut } from '../src/leaves-out.js';
import { booth, shell, spec } from './fixtures/spec-builder.js';

it('leavesOut(spec) always names the structure and the workmanship', () => {
  for (const changes of [{}, { booths: [] }]) {
    const text = leavesOut(spec(changes)).join(' ');
    expect(text).toContain('footfall');
    expect(text).toContain('Workmanship');
  }
});

it('leavesOut(spec) names faces that have no build-up', () => {
  const faces = { ...booth().faces, roof: undefined, floor: undefined };
  const text = leavesOut(spec({ booths: [booth(shell, { faces })] })).join(' ');
  expect(text).toContain('No build-up is given for roof of alcove');
  expect(text).toContain('The floor of alcove is not described');
});
