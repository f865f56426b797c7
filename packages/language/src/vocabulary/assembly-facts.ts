import { amount, literal, optional, quantity, reference, title } from './parts.js';
import type { Block, Fact, Part } from './shape.js';

export const layerFact: Fact = {
  keyword: '',
  parts: [reference('material', 'material'), optional(amount('amount'))],
  repeats: true,
  example: 'gypsum-board 12.5 mm',
  documentation:
    'A layer: a material and its thickness, or its mass per area for what is sold so; nothing after the name when the material has its own. A thickness of `0 mm` of a porous, limp or covering material means that the layer is absent.',
};

/** A line of an assembly: a layer, or the layers of another assembly. */
export const assemblyLayerFact: Fact = {
  ...layerFact,
  parts: [reference('material', 'material', 'assembly'), optional(amount('amount'))],
  documentation: `${layerFact.documentation} The name of another assembly stands for all of its layers, from its outside to its inside.`,
};

export const airFact: Fact = {
  keyword: 'air',
  parts: [quantity('thickness', 'length')],
  repeats: true,
  example: 'air 50 mm',
  documentation: 'An empty gap between two layers; `0 mm` means that there is none.',
};

const fixingParts: readonly Part[] = [
  quantity('thickness', 'length'),
  literal('every'),
  quantity('spacing', 'length'),
  literal('stiffness'),
  quantity('stiffness', 'stiffness'),
];

export const channelsFact: Fact = {
  keyword: 'channels',
  parts: fixingParts,
  repeats: true,
  example: 'channels 16 mm every 400 mm stiffness 150 N/mm',
  documentation:
    'Resilient channels or bars between a frame and a board: how far they hold the board off the studs, their distance from centre to centre, and the stiffness of one where it crosses a stud: the load there over how far it gives.',
};

export const clipsFact: Fact = {
  keyword: 'clips',
  parts: fixingParts,
  repeats: true,
  example: 'clips 40 mm every 600 mm stiffness 80 N/mm',
  documentation:
    'Resilient clips between a frame and a board: how far they hold the board off the studs, their distance along a stud, and the stiffness of one clip: the load on it over how far it gives.',
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
    'Studs between two boards: width along the wall x depth across it, or nominal lumber such as `2x4`; `every` is the distance from centre to centre. Timber unless `of` names something else, such as `of steel-stud`.',
};

export const assemblyBlock: Block = {
  name: 'assembly',
  documentation: 'A build-up, its layers listed from outside to inside.',
  facts: [airFact, frameFact, channelsFact, clipsFact, assemblyLayerFact],
};

export const frameBlock: Block = {
  name: 'frame',
  documentation: 'What lies between the studs and how boards are fixed to them.',
  facts: [
    {
      keyword: 'fill',
      parts: [reference('material', 'material'), optional(amount('amount'))],
      example: 'fill mineral-wool-40 70 mm',
      documentation: 'Porous material in the cavity; the rest of the depth is air.',
    },
    {
      keyword: 'screws',
      parts: [quantity('value', 'length')],
      default: 'screw-spacing',
      example: 'screws 300 mm',
      documentation:
        'Distance of the screws along a light steel stud, where the board is held hard against it. Timber counts as touched all along.',
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
