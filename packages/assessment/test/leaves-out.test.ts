import { expect, it } from 'vitest';
import { leavesOut } from '../src/leaves-out.js';
import { assembly, booth, given, plywood, sheet, shell, spec, wool } from './fixtures/spec-builder.js';

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

it('leavesOut(spec) tells below which frequency the fit for fibre is carried on', () => {
  const light = { ...wool, name: 'light-wool', resistivity: given(4000) };
  const texts = (material: typeof wool) =>
    leavesOut(spec({ booths: [], walls: [assembly('wall', sheet(plywood, 0.012), sheet(material, 0.05))] })).join(' ');
  expect(texts(wool)).toContain('wool below 120 Hz');
  expect(texts(light)).not.toContain('Fibre is computed');
});
