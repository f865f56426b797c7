import type { AssemblyLayer, Booth } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { withDeeperGap, withFibre } from '../../src/assembly/gap-layers.js';
import { withJoinedLeaf } from '../../src/assembly/joined-leaf.js';
import { editsOfFix } from '../../src/findings/edits-of-fix.js';
import { withTighterOpening } from '../../src/findings/tighter-opening.js';
import { withBuildUp } from '../../src/findings/with-build-up.js';
import { specOf } from '../fixtures/from-text.js';

const text = `use catalog
assembly wall {
  gypsum-board 12.5 mm
  air 6 mm
  osb 18 mm
  air 2 cm + 4 cm
  gypsum-board 15 mm
}
site { room 4 m x 4 m x 2.5 m }
booth box {
  inside 1.2 m x 1.2 m x 2 m
  walls wall
  roof wall
  floor wall
  door entry on front {
    size 660 mm x 1900 mm
    leaf wall
    gap perimeter 0.3 mm
  }
  vent intake on left { duct 125 mm; run 1.2 m; bends 2 }
  slit crack on back { length 1 m; gap 1 mm; depth 50 mm }
}
`;
const [booth] = specOf(text).booths as [Booth];
const layers = booth.faces.left!.assembly.layers;
const said = (fixed: (booth: Booth) => Booth) =>
  editsOfFix({ fixed } as Parameters<typeof editsOfFix>[0], [booth]).map(({ kind, range, text: put, from }) => ({
    kind,
    at: text.slice(range.from, range.to).split('\n')[0],
    put: from === null ? put : text.slice(from.from, from.to),
  }));
const rebuilt = (changed: readonly AssemblyLayer[] | undefined) =>
  said((each) => withBuildUp(each, 'wall', changed ?? []));

describe('editsOfFix', () => {
  it('writes a changed figure once, in the unit that stands there', () => {
    expect(rebuilt(withDeeperGap(layers, [1], 0.044))).toEqual([{ kind: 'value', at: '6 mm', put: '50 mm' }]);
    expect(said((each) => withTighterOpening(each, 'vent:intake'))).toEqual([
      { kind: 'value', at: '1.2 m', put: '2.2 m' },
      { kind: 'value', at: '2', put: '3' },
    ]);
  });

  it('writes a sum anew in millimetres', () => {
    expect(rebuilt(withDeeperGap(layers, [3], 0.04))).toEqual([{ kind: 'value', at: '2 cm + 4 cm', put: '100 mm' }]);
  });

  it('adds a fact that was assumed, on the block that lacks it', () => {
    expect(said((each) => withTighterOpening(each, 'door:entry:threshold'))).toEqual([
      { kind: 'fact', at: 'door entry on front', put: 'gap threshold 0 mm' },
    ]);
  });

  it('takes an opening away', () => {
    expect(said((each) => withTighterOpening(each, 'slit:crack'))).toEqual([
      { kind: 'remove', at: 'slit crack on back { length 1 m; gap 1 mm; depth 50 mm }', put: '' },
    ]);
  });

  it('fills a gap with fibre of the catalogue', () => {
    expect(rebuilt(withFibre(layers, [1]))).toEqual([{ kind: 'value', at: 'air 6 mm', put: 'mineral-wool-40 6 mm' }]);
  });

  it('puts layers in another order', () => {
    expect(rebuilt(withJoinedLeaf(layers, 1, 'outer'))).toEqual([
      { kind: 'move', at: 'air 6 mm', put: 'osb 18 mm' },
      { kind: 'move', at: 'osb 18 mm', put: 'air 6 mm' },
    ]);
  });

  it('says nothing where nothing changes, or where lines cannot say it', () => {
    expect(said((each) => each)).toEqual([]);
    expect(said((each) => ({ ...each, doors: [...each.doors, ...each.doors] }))).toEqual([]);
  });
});
