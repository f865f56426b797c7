import type { Booth, Site } from '@boothwright/language';
import { describe, expect, test } from 'vitest';
import { ceilingOver } from '../../src/moving/ceiling-over.js';
import { doorSwing } from '../../src/moving/door-swing.js';
import { lifters } from '../../src/moving/lifters.js';
import { obstacleFit } from '../../src/moving/obstacle-fit.js';
import { panelRaised } from '../../src/moving/panel-raised.js';
import { type Box, boothBox } from '../../src/moving/place.js';
import { roofFit, roofMethod } from '../../src/moving/roof-fit.js';
import { sideGaps } from '../../src/moving/side-gaps.js';
import { assembly, booth, door, given, panel, place, sheet, shell, site } from '../fixtures/spec-builder.js';
import { obstacle } from './fixtures.js';

const lid = assembly('lid', sheet(panel('board', 600, 3e9), 0.125));

/** The basement: 4.20 x 2.80 x 2.08 m; a booth of 1.62 x 1.82 x 2.00 m with a roof of 125 mm. */
function basement(
  x: number,
  y: number,
  obstacles: Site['obstacles'] = [],
  height = 2,
): { booth: Booth; site: Site; box: Box } {
  const den = booth(shell, {
    outside: { width: given(1.62), depth: given(1.82), height: given(height) },
    standsAt: { range: place(), x: given(x), y: given(y) },
  });
  const roofed = { ...den, faces: { ...den.faces, roof: { assembly: lid, range: place() } } };
  const room = site({ room: { width: given(4.2), depth: given(2.8), height: given(2.08) }, obstacles });
  return { booth: roofed, site: room, box: boothBox(roofed, room) as Box };
}

const pipe = obstacle('pipe', [0, 0, 1.98], [4.2, 0.3, 0.1]);

describe('a roof under a low ceiling', () => {
  test('80 mm above the booth are too few to lift it on; 205 mm over walls of 1.875 m let it slide', () => {
    const { booth: den, site: room, box } = basement(0.1, 0);
    const fit = roofFit(den, room, box, sideGaps(box, room), []);
    expect(fit?.aboveBoothM).toBeCloseTo(0.08, 9);
    expect(fit?.wallTopM).toBeCloseTo(1.875, 9);
    expect(fit?.overWallsM).toBeCloseTo(0.205, 9);
    expect(fit?.lift.passes).toBe('does-not-go');
    expect(fit?.slide.passes).toBe('goes');
    // To the right are 4.20 - 1.72 = 2.48 m for a roof of 1.62 m; 0.98 m behind and none in front for its 1.82 m.
    expect(fit?.slide.sides).toEqual(['right']);
    expect(fit && roofMethod(fit)).toBe('slide');
    expect(fit?.text).toContain('cannot be lifted on: 80 mm between booth and ceiling');
  });

  test('without floor before any side it does not slide either', () => {
    const { booth: den, site: room, box } = basement(1.3, 0.5);
    const fit = roofFit(den, room, box, sideGaps(box, room), []);
    // 1.30 m left and 1.28 m right of it, 1.62 m needed; 0.50 m in front and 0.48 m behind, 1.82 m needed.
    expect(fit?.slide.sides).toEqual([]);
    expect(fit?.slide.passes).toBe('does-not-go');
    expect(fit && roofMethod(fit)).toBeNull();
  });

  test('a pipe over the booth is its ceiling', () => {
    const { site: room, box } = basement(0.1, 0, [pipe], 1.9);
    expect(ceilingOver(box, room)).toEqual({ height: 1.98, name: 'pipe' });
    expect(ceilingOver({ ...box, y: [0.3, 2] }, room)).toEqual({ height: 2.08, name: 'ceiling' });
  });

  test('a pipe over the start is no place to start from', () => {
    const { booth: den, site: room, box } = basement(0.1, 0.4, [obstacle('duct', [2, 0, 1.9], [0.2, 2.8, 0.1])]);
    const fit = roofFit(den, room, box, sideGaps(box, room), []);
    expect(fit?.slide.sides).toEqual([]);
  });

  test('an unknown place leaves the start open', () => {
    const { booth: den, site: room } = basement(0, 0);
    const fit = roofFit(den, room, undefined, null, []);
    expect(fit?.slide).toMatchObject({ sides: null, passes: 'goes' });
  });
});

describe('obstacleFit(obstacle, box, site)', () => {
  test('a pipe at 1.98 m is 20 mm too low for a booth of 2.00 m; 0.30 m off the wall clears it', () => {
    const { site: room, box } = basement(0.05, 0.05, [pipe]);
    const fit = obstacleFit(pipe, box, room);
    expect(fit.collides).toBe(true);
    expect(fit.aboveM).toBeCloseTo(-0.02, 9);
    expect(fit.move?.towards).toBe('back');
    expect(fit.move?.byM).toBeCloseTo(0.25, 9);
    expect(fit.move?.offWallM).toBeCloseTo(0.3, 9);
    expect(fit.text).toContain('20 mm missing');
    expect(fit.text).toContain('0.30 m off the wall');
  });

  test('a booth that stands clear of it, or lower, does not meet it', () => {
    const clear = basement(0.05, 0.3, [pipe]);
    expect(obstacleFit(pipe, clear.box, clear.site)).toMatchObject({ collides: false, aboveM: null, gapM: 0 });
    const low = basement(0.05, 0.05, [pipe], 1.95);
    const fit = obstacleFit(pipe, low.box, low.site);
    expect(fit.collides).toBe(false);
    expect(fit.aboveM).toBeCloseTo(0.03, 9);
  });

  test('no move is told where the room has none', () => {
    const wide = obstacle('duct', [0, 0, 1.9], [4.2, 1.5, 0.1]);
    const { site: room, box } = basement(0.05, 0.05, [wide]);
    // Clear of it the booth would reach 1.50 + 1.82 = 3.32 m into a room of 2.80 m.
    expect(obstacleFit(wide, box, room).move).toBeNull();
  });

  test('the gap to something beside it is the shortest line in plan', () => {
    const post = obstacle('post', [2, 2.5, 0], [0.1, 0.1, 2.08]);
    const { site: room, box } = basement(0.08, 0.28, [post]);
    // Corner of the booth at 1.70, 2.10; corner of the post at 2.00, 2.50: a triangle of 0.3, 0.4, 0.5.
    expect(obstacleFit(post, box, room).gapM).toBeCloseTo(0.5, 9);
  });
});

describe('sideGaps(box, site)', () => {
  test('counts what stands before a wall, and not what hangs high', () => {
    const radiator = obstacle('radiator', [1.9, 2.65, 0.1], [1, 0.15, 0.6]);
    const { site: room, box } = basement(0.05, 0.05, [pipe, radiator]);
    const gaps = sideGaps(box, room);
    expect(gaps.map(({ side, reachable }) => [side, reachable])).toEqual([
      ['front', false],
      ['back', true],
      ['left', false],
      ['right', true],
    ]);
    expect(gaps[1]?.freeM).toBeCloseTo(2.8 - 1.87, 9);
    const before = basement(0.05, 0.05, [obstacle('radiator', [1, 2.2, 0.1], [1, 0.6, 0.6])]);
    expect(sideGaps(before.box, before.site)[1]).toMatchObject({ obstacle: 'radiator', reachable: false });
  });
});

describe('doorSwing(door, box, site)', () => {
  test('opens as far as the wall lets it: sin a = free / leaf', () => {
    const { site: room, box } = basement(0.05, 0.35);
    const swing = doorSwing(door(shell, { size: { width: given(0.7), height: given(1.78) } }), box, room);
    expect(swing.opensDeg).toBeCloseTo(30, 6);
    expect(swing.text).toContain('opens only 30 degrees');
  });

  test('opens where there is floor before it', () => {
    const { site: room, box } = basement(0.05, 0.95);
    expect(doorSwing(door(shell), box, room).opensDeg).toBe(90);
  });

  test('a radiator before the leaf stops it; one beside it does not', () => {
    const at = (x: number) => [obstacle('radiator', [x, 0, 0], [0.3, 0.6, 0.6])];
    const leaf = door(shell, { offset: given(0.8), size: { width: given(0.7), height: given(1.78) } });
    const before = basement(0, 0.9, at(1));
    expect(doorSwing(leaf, before.box, before.site)).toMatchObject({ before: 'radiator' });
    const beside = basement(0, 0.9, at(0.2));
    expect(doorSwing(leaf, beside.box, beside.site).opensDeg).toBe(90);
  });
});

describe('panelRaised(height, thickness, base, room)', () => {
  test('needs its diagonal under the ceiling', () => {
    const raised = panelRaised(2.0, 0.3, 0, 2.03);
    // sqrt(2.00^2 + 0.30^2) = 2.0224 m.
    expect(raised.diagonalM).toBeCloseTo(2.0224, 4);
    expect(raised.passes).toBe('tight');
    expect(panelRaised(2.0, 0.3, 0, 2.02).passes).toBe('does-not-go');
  });

  test('a panel that cannot rise on the deck stands up beside it and is set onto it', () => {
    const raised = panelRaised(2.0, 0.3, 0.02, 2.06);
    expect(raised.leftInPlaceM).toBeCloseTo(2.06 - 0.02 - Math.hypot(2, 0.3), 9);
    expect(panelRaised(2.0, 0.3, 0.03, 2.05)).toMatchObject({ passes: 'goes' });
    expect(panelRaised(2.0, 0.3, 0.03, 2.05).text).toContain('set it in place');
  });
});

describe('lifters(panel)', () => {
  const carried = { face: 'front', widthM: 0.6, heightM: 2.1 };
  test.each([
    [{ ...carried, massKg: 20 }, 2, false],
    [{ ...carried, massKg: 31 }, 2, false],
    [{ ...carried, massKg: 51 }, 3, false],
    [{ ...carried, heightM: 0.9, massKg: 20 }, 1, false],
    [{ ...carried, heightM: 0.9, massKg: 25.1 }, 2, false],
    [{ ...carried, face: 'roof', heightM: 0.9, massKg: 12 }, 2, true],
  ])('one person per 25 kg, two for a long panel, props for a roof: %j', (one, people, props) => {
    expect(lifters(one)).toEqual({ people, props });
  });
});
