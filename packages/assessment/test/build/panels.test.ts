import { describe, expect, it } from 'vitest';
import { panelsOf } from '../../src/build/panels.js';
import {
  airGap,
  assembly,
  booth,
  door,
  frame,
  given,
  gypsum,
  place,
  plywood,
  sheet,
} from '../fixtures/spec-builder.js';

const cut = (width: number, split?: number) => ({
  range: place(),
  width: given(width),
  split: split === undefined ? undefined : given(split),
  fastened: undefined,
  roof: undefined,
});

/** 12 mm plywood, 70 mm frame of 45 mm studs every 600 mm, wool, 12.5 mm gypsum: 94.5 mm; deck 12 + 18 + 12 mm = 42 mm. */
const cutBooth = booth(undefined, { panels: cut(0.6) });

describe('panelsOf(booth)', () => {
  it('has none, and says why, when the text does not cut the faces', () => {
    const { built, why } = panelsOf(booth());
    expect(built).toEqual([]);
    expect(why).toBe('the text does not say how the faces are cut into panels');
  });

  it('cuts every face into equal panels no wider than asked', () => {
    const { built } = panelsOf(cutBooth);
    const back = built.filter(({ result }) => result.face === 'back');
    // Outside width 1.15 + 2 x 0.0945 = 1.339 m, three panels; walls reach from the ground to the roof: 2 + 0.042 m.
    expect(back.map(({ result }) => result.name)).toEqual(['back 1', 'back 2', 'back 3']);
    for (const { result } of back) {
      expect(result.widthM).toBeCloseTo(1.339 / 3, 9);
      expect(result.heightM).toBeCloseTo(2.042, 9);
      expect(result.thicknessM).toBeCloseTo(0.0945, 9);
    }
    expect(built.map(({ result }) => result.number)).toEqual(built.map((_, index) => index + 1));
  });

  it('weighs a panel from its sheets, studs, plates and fill', () => {
    const [panel] = panelsOf(cutBooth).built.filter(({ result }) => result.face === 'back');
    const [width, height] = [1.339 / 3, 2.042];
    const sheets = width * height * (550 * 0.012 + 700 * 0.0125);
    const plates = 2 * width;
    const studs = 2 * (height - 0.09);
    const sticks = (plates + studs) * 0.045 * 0.07 * 480;
    const wool = (width - 0.09) * (height - 0.09) * 0.07 * 40;
    expect(panel?.result.massKg).toBeCloseTo(sheets + sticks + wool, 9);
  });

  it('gives a door a panel of its own with a post at either side, even where that is wider', () => {
    const { built } = panelsOf(cutBooth);
    const front = built.filter(({ result }) => result.face === 'front');
    expect(front).toHaveLength(3);
    const own = front[1]?.result;
    expect(own?.widthM).toBeCloseTo(0.66 + 2 * 0.045, 9);
    expect(own?.openings).toHaveLength(1);
    expect(own?.openings[0]).toMatchObject({ kind: 'door', name: 'entry' });
    expect(own?.openings[0]?.offsetM).toBeCloseTo(0.045, 9);
    // The door stands on the deck, 42 mm above the ground.
    expect(own?.openings[0]?.baseM).toBeCloseTo(0.042, 9);
  });

  it('cuts walls at a horizontal joint, but not the panel of a door', () => {
    const { built, notes } = panelsOf(booth(undefined, { panels: cut(0.6, 1.2) }));
    const names = built.map(({ result }) => result.name);
    expect(names).toContain('left 1 lower');
    expect(names).toContain('left 1 upper');
    expect(names).toContain('front 2');
    expect(built.find(({ result }) => result.name === 'left 1 upper')?.result.heightM).toBeCloseTo(2.042 - 1.2, 9);
    expect(notes.join()).toContain('the joint would cut it');
  });

  it('fills the outside box: walls, roof and deck meet without overlapping', () => {
    const { built } = panelsOf(booth(undefined, { panels: cut(0.6), doors: [] }));
    const volume = built.reduce((sum, { result: { box } }) => sum + box.widthM * box.depthM * box.heightM, 0);
    const outside = 1.339 * 1.539 * 2.1365;
    const inside = 1.15 * 1.35 * 2;
    const air = 1.15 * 1.35 * 0.012;
    expect(volume).toBeCloseTo(outside - inside - air, 9);
    built.forEach(({ result: a }, index) => {
      for (const { result: b } of built.slice(index + 1)) expect(overlap(a.box, b.box)).toBeLessThan(1e-9);
    });
  });

  it('comes in an outer and an inner shell where clear air parts two frames', () => {
    const two = assembly('two', sheet(plywood, 0.012), frame(0.05), airGap(0.02), frame(0.05), sheet(gypsum, 0.0125));
    const { built } = panelsOf(booth(two, { panels: cut(0.7), doors: [door(two)] }));
    const left = built.filter(({ result }) => result.face === 'left').map(({ result }) => result);
    expect(left.map(({ leaf }) => leaf)).toEqual(['outer', 'outer', 'outer', 'inner', 'inner']);
    expect(left[0]?.thicknessM).toBeCloseTo(0.062, 9);
    expect(left[4]?.thicknessM).toBeCloseTo(0.0625, 9);
    // The inner shell stands between front and back of the inner shell: the inside depth.
    expect((left[3]?.widthM ?? 0) + (left[4]?.widthM ?? 0)).toBeCloseTo(1.35, 9);
  });

  it('says how far a wall panel leans before it falls', () => {
    const slabWall = assembly('even', sheet(plywood, 0.1));
    const { built } = panelsOf(
      booth(slabWall, {
        panels: cut(0.7),
        doors: [],
        faces: { ...noFaces(), left: { assembly: slabWall, range: place() } },
      }),
    );
    expect(built[0]?.result.centreOfGravityM.height).toBeCloseTo(1, 9);
    expect(built[0]?.result.tipAngleDegrees).toBeCloseTo((Math.atan(0.05 / 1) * 180) / Math.PI, 9);
  });
});

function noFaces() {
  return { front: undefined, back: undefined, left: undefined, right: undefined, roof: undefined, floor: undefined };
}

interface Box {
  readonly xM: number;
  readonly yM: number;
  readonly zM: number;
  readonly widthM: number;
  readonly depthM: number;
  readonly heightM: number;
}

function overlap(a: Box, b: Box): number {
  const along = (fromA: number, sizeA: number, fromB: number, sizeB: number) =>
    Math.max(0, Math.min(fromA + sizeA, fromB + sizeB) - Math.max(fromA, fromB));
  return (
    along(a.xM, a.widthM, b.xM, b.widthM) *
    along(a.yM, a.depthM, b.yM, b.depthM) *
    along(a.zM, a.heightM, b.zM, b.heightM)
  );
}

describe('a window in a panel', () => {
  const view = (sill?: number) => ({
    ...{ name: 'view', nameRange: place(), range: place(), face: 'back' as const, faceRange: place() },
    size: { width: given(0.4), height: given(0.5) },
    offset: given(0.47),
    ...(sill === undefined ? {} : { sill: given(sill) }),
    pane: assembly('pane', sheet(plywood, 0.012)),
  });
  const opening = (sill?: number) => {
    const { built, notes } = panelsOf(booth(undefined, { panels: cut(0.6), windows: [view(sill)] }));
    return { found: built.flatMap(({ result }) => result.openings).find(({ name }) => name === 'view'), notes };
  };

  it('sits at its sill above the deck, which is 42 mm thick, and nothing is assumed', () => {
    const { found, notes } = opening(1.2);
    expect(found?.baseM).toBeCloseTo(1.242, 9);
    expect(notes.join(' ')).not.toContain('half height');
  });

  it('sits at half the height of its panel without one, and that is said', () => {
    const { found, notes } = opening();
    expect(found?.baseM).toBeCloseTo((2.042 - 0.5) / 2, 9);
    expect(notes.join(' ')).toContain('does not say how high view sits');
  });
});
