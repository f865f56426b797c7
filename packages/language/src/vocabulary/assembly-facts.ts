import { amount, literal, optional, quantity, reference, title } from './parts.js';
import type { Block, Fact } from './shape.js';

export const layerFact: Fact = {
  keyword: '',
  parts: [reference('material', 'material'), optional(amount('amount'))],
  repeats: true,
  example: 'gypsum-board 12.5 mm',
  documentation:
    'A layer: a material and its thickness, or its mass per area for what is sold so; nothing after the name when the material has its own. A thickness of `0 mm` of a porous, limp or covering material means that the layer is absent.',
};

export const airFact: Fact = {
  keyword: 'air',
  parts: [quantity('thickness', 'length')],
  repeats: true,
  example: 'air 50 mm',
  documentation: 'An empty gap between two layers; `0 mm` means that there is none.',
};

export const frameFact: Fact = {
  keyword: 'frame',
  parts: [
    {
      kind: 'either',
      branches: [[{ kind: 'nominal', slot: 'nominal' }], [{ kind: 'size', axes: ['width', 'depth'] }]],
    },
    literal('every'),
    quantity('spacing', 'length'),
    optional(literal('of'), reference('lumber', 'material')),
  ],
  block: { name: 'frame', required: false },
  repeats: true,
  default: 'stud-lumber',
  example: 'frame 45 mm x 70 mm every 600 mm { fill mineral-wool-40 70 mm }',
  documentation:
    'Studs between two boards: width along the wall x depth across it, or nominal lumber such as `2x4`; `every` is the distance from centre to centre.',
};

export const assemblyBlock: Block = {
  name: 'assembly',
  documentation: 'A build-up, its layers listed from outside to inside.',
  facts: [airFact, frameFact, layerFact],
};

export const frameBlock: Block = {
  name: 'frame',
  documentation: 'What lies between the studs.',
  facts: [
    {
      keyword: 'fill',
      parts: [reference('material', 'material'), optional(amount('amount'))],
      example: 'fill mineral-wool-40 70 mm',
      documentation: 'Porous material in the cavity; the rest of the depth is air.',
    },
  ],
};

export const liningBlock: Block = {
  name: 'lining',
  documentation: 'Layers fixed inside, listed from the wall towards the room.',
  facts: [airFact, layerFact],
};

export const assemblyFact: Fact = {
  keyword: 'assembly',
  parts: [{ kind: 'new-name', declares: 'assembly' }, title],
  block: { name: 'assembly', required: true },
  declares: 'assembly',
  repeats: true,
  example: 'assembly shell "wall panel" { gypsum-board 12.5 mm }',
  documentation: 'A build-up of layers from outside to inside, used for walls, roof, floor, doors and windows.',
};
