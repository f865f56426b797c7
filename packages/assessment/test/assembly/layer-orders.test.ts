import type { AssemblyLayer, Material } from '@boothwright/language';
import { expect, it } from 'vitest';
import { constructionOf } from '../../src/assembly/construction.js';
import { assess } from '../fixtures/assessed.js';
import {
  airGap,
  assembly,
  byMass,
  frame,
  given,
  gypsum,
  place,
  plywood,
  sheet,
  spec,
  wool,
} from '../fixtures/spec-builder.js';

const cloth: Material = {
  name: 'cloth',
  nameRange: place(),
  range: place(),
  kind: 'cloth',
  flowResistance: given(150),
  fromCatalogue: false,
};

function orders<T>(things: readonly T[]): T[][] {
  if (things.length <= 1) return [[...things]];
  return things.flatMap((thing, index) => orders(things.toSpliced(index, 1)).map((rest) => [thing, ...rest]));
}

const layers: AssemblyLayer[] = [
  sheet(plywood, 0.012),
  byMass(cloth, 0.3),
  frame(0.07),
  sheet(gypsum, 0.0125),
  airGap(0.02),
  sheet(wool, 0.05),
];

it('finds studs only between two sheets that touch the frame, in any order of six layers', () => {
  for (const order of orders(layers)) {
    const construction = constructionOf(order);
    for (const { between } of construction.connections) {
      for (const index of between) expect(construction.layers[index]?.kind).toBe('plate');
    }
  }
});

it('fixes a stud through cloth to the sheet on either side', () => {
  const [ply, fabric, studs, board] = layers as [AssemblyLayer, AssemblyLayer, AssemblyLayer, AssemblyLayer];
  expect(constructionOf([ply, fabric, studs, board]).connections[0]?.between).toEqual([0, 3]);
  expect(constructionOf([ply, studs, fabric, board]).connections[0]?.between).toEqual([0, 3]);
});

// Six layers that differ have 720 orders; every eleventh of them takes each layer to each place often enough.
it('assesses a build-up whatever the order of its layers', () => {
  orders(layers).forEach((order, index) => {
    if (index % 11 !== 0) return;
    const kinds = order.map((layer) => (layer.kind === 'material' ? layer.material.name : layer.kind)).join(', ');
    const run = () => assess(spec({ walls: [assembly('wall', ...order)], booths: [], site: undefined }));
    expect(run, kinds).not.toThrow();
  });
}, 120_000);
