import { airProperties } from '@boothwright/acoustics';
import type { AssemblyLayer, FrameLayer, Material } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { constructionOf } from '../../src/assembly/construction.js';
import { withDeeperGap } from '../../src/assembly/gap-layers.js';
import { layerText } from '../../src/assembly/layer-text.js';
import { studOf } from '../../src/assembly/stud-of.js';
import { transmissionLossOf } from '../../src/assembly/transmission-loss.js';
import { createMemo } from '../../src/memo/memo.js';
import { airGap, frame, given, gypsum, lumber, plywood, sheet } from '../fixtures/spec-builder.js';

const timber = frame(0.075, 0.075) as FrameLayer;
const steel: FrameLayer = {
  ...timber,
  width: given(0.035),
  lumber: { ...lumber, name: 'steel-stud', gauge: given(0.0005) },
  screws: given(0.3),
};
const channels: AssemblyLayer = {
  ...airGap(0.016),
  fixings: { kind: 'channels', spacing: given(0.4), stiffness: given(150_000) },
} as AssemblyLayer;

describe('studOf(frame, fixings)', () => {
  it('is rigid for timber', () => {
    expect(studOf(timber)).toEqual({ spacing: 0.6, width: 0.045 });
  });

  it('yields as the two flanges of folded steel do, and is rigid at its screws', () => {
    // Strips of 17.5 mm held at both ends: L^3/(12 D) each, D = E t^3/(12 (1 - nu^2)) with E = 207 GPa and nu = 0.3.
    const stiffness = (207e9 * 0.0005 ** 3) / (12 * (1 - 0.3 ** 2));
    const { compliance, ...rest } = studOf(steel);
    expect(compliance).toBeCloseTo((2 * 0.0175 ** 3) / (12 * stiffness), 12);
    expect(rest).toEqual({ spacing: 0.6, width: 0.035, screwSpacing: 0.3 });
  });

  it('yields as stated where a stiffness is stated, all along', () => {
    const soft = { ...steel, lumber: { ...steel.lumber, studStiffness: given(500_000) } };
    expect(studOf(soft)).toEqual({ spacing: 0.6, width: 0.035, compliance: 2e-6 });
  });

  it('adds what channels give: their distance over their stiffness, without screws into the stud', () => {
    const { fixings } = channels as { fixings: Parameters<typeof studOf>[1] };
    expect(studOf(timber, fixings)).toEqual({ spacing: 0.6, width: 0.045, compliance: 0.4 / 150_000 });
    const both = studOf(steel, fixings);
    expect(both.compliance).toBeCloseTo((studOf(steel).compliance as number) + 0.4 / 150_000, 12);
    expect(both).not.toHaveProperty('screwSpacing');
  });
});

describe('constructionOf(layers) with channels', () => {
  const ties = (...layers: AssemblyLayer[]) => constructionOf(layers).connections;
  const [outer, inner] = [sheet(plywood, 0.012), sheet(gypsum, 0.0125)];

  it('ties the sheets through them, whichever side of the frame they are on', () => {
    const inside = ties(outer, timber, channels, inner);
    expect(inside).toEqual([{ between: [0, 3], spacing: 0.6, width: 0.045, compliance: 0.4 / 150_000 }]);
    expect(ties(outer, channels, timber, inner)).toEqual([
      { between: [0, 3], spacing: 0.6, width: 0.045, compliance: 0.4 / 150_000 },
    ]);
    expect(ties(outer, channels, timber, channels, inner)).toEqual([
      { between: [0, 4], spacing: 0.6, width: 0.045, compliance: 0.8 / 150_000 },
    ]);
  });

  it('ties nothing where plain air follows them', () => {
    expect(ties(outer, timber, channels, airGap(0.01), inner)).toEqual([]);
    expect(ties(outer, channels, airGap(0.01), timber, inner)).toEqual([]);
  });

  it('counts their depth as air', () => {
    expect(constructionOf([outer, timber, channels, inner]).gaps[0]?.air).toBeCloseTo(0.016, 9);
  });

  it('names them in the list of layers', () => {
    expect([layerText(channels), layerText(steel)]).toEqual([
      'channels 16 mm every 400 mm',
      'frame 35 mm x 75 mm every 600 mm of steel-stud, filled with wool 75 mm',
    ]);
  });
});

it('withDeeperGap(layers, gap, extra) deepens the frame and not the channels on it', () => {
  const deeper = withDeeperGap([sheet(plywood, 0.012), timber, channels, sheet(gypsum, 0.0125)], [1, 2], 0.05);
  expect(deeper[1]).toMatchObject({ depth: { value: expect.closeTo(0.125, 9) } });
  expect(deeper[2]).toEqual(channels);
});

describe('transmissionLossOf(layers, size)', () => {
  const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
  const memo = createMemo();
  const at1000 = (layers: readonly AssemblyLayer[]) =>
    transmissionLossOf(layers, { width: 4, height: 2.5 }, air, memo).total[13] as number;
  const board = sheet(gypsum, 0.0125);

  it('of boards on timber, light steel and channels rises in this order', () => {
    const [rigid, folded, held] = [[timber], [steel], [timber, channels]].map((between) =>
      at1000([board, ...between, board]),
    ) as [number, number, number];
    expect(folded).toBeGreaterThan(rigid + 2);
    expect(held).toBeGreaterThan(folded + 10);
  });

  it('of a board with a grain coincides over a wide range instead of at one frequency', () => {
    const along: Material = plywood;
    const grained: Material = { ...plywood, name: 'grained', modulusAcross: given(7e9 / 16) };
    const curve = (material: Material) =>
      transmissionLossOf([sheet(material, 0.018)], { width: 4, height: 2.5 }, air, memo).total;
    // Below the first of the two coincidences mass alone counts; above the second of the stiff way both are bending plates.
    const loss = curve(along).map((value, band) => value - (curve(grained)[band] as number));
    expect(Math.max(...loss.map(Math.abs))).toBeGreaterThan(2);
    expect(curve({ ...plywood, modulusAcross: given(7e9) })).toEqual(
      curve(along).map((value) => expect.closeTo(value, 6)),
    );
  });
});
