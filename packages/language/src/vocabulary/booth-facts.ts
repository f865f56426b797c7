import { airFact, layerFact } from './assembly-facts.js';
import { face, literal, newName, optional, position, quantity, reference, size3, title } from './parts.js';
import type { Block, BlockName, Fact, SymbolKind } from './shape.js';
import { FACES } from './words.js';

function opening(keyword: SymbolKind & BlockName, example: string, documentation: string): Fact {
  return {
    keyword,
    parts: [newName(keyword), title, literal('on'), face],
    block: { name: keyword, required: true },
    declares: keyword,
    repeats: true,
    example,
    documentation,
  };
}

export const boothFact: Fact = {
  keyword: 'booth',
  parts: [newName('booth'), title],
  block: { name: 'booth', required: true },
  declares: 'booth',
  repeats: true,
  example: 'booth alcove "the alcove booth" { inside 1.15 m x 1.35 m x 2.00 m; walls shell; roof shell; floor deck }',
  documentation: 'A booth: its sizes, what each face is made of, its openings and what stands in it.',
};

const made = (what: string): string => `The assembly that makes the ${what}.`;

export const boothBlock: Block = {
  name: 'booth',
  documentation:
    'The booth itself. You choose which wall is the front; front, back, left and right are named as seen from outside, standing before it.',
  facts: [
    {
      keyword: 'outside',
      parts: [size3],
      example: 'outside 1.34 m x 1.54 m x 2.14 m',
      documentation:
        'Width x depth x height over the structure, without what is fixed to it outside; when it is left out, the inside and the layers of both faces.',
    },
    {
      keyword: 'inside',
      parts: [size3],
      example: 'inside 1.15 m x 1.35 m x 2.00 m',
      documentation:
        'Width x depth x height between the structural faces, before any lining; when it is left out, the outside less the layers of both faces.',
    },
    {
      keyword: 'walls',
      parts: [reference('assembly', 'assembly')],
      example: 'walls shell',
      documentation: made('four walls; a single face such as `front` overrides it'),
    },
    ...FACES.map(
      (name): Fact => ({
        keyword: name,
        parts: [reference('assembly', 'assembly')],
        example: `${name} shell`,
        documentation: made(name === 'roof' || name === 'floor' ? name : `${name} wall`),
      }),
    ),
    {
      keyword: 'lining',
      parts: [literal('on'), { kind: 'faces', slot: 'faces' }, optional(literal('cover'), quantity('cover', 'share'))],
      block: { name: 'lining', required: true },
      repeats: true,
      default: 'lining-cover',
      example: 'lining on left, right cover 80 % { mineral-wool-60 50 mm }',
      documentation: 'Layers fixed inside a face, listed from the wall towards the room; `on walls` means all four.',
    },
    opening('door', 'door entry on front { size 660 mm x 1900 mm; leaf shell }', 'A door in a face.'),
    opening('window', 'window view on front { size 400 mm x 500 mm; pane acrylic 18 mm }', 'A window in a face.'),
    opening('vent', 'vent intake on left { duct 125 mm; run 1.2 m; bends 2 }', 'An air path through a face.'),
    opening(
      'slit',
      'slit joints on back { length 20 m; gap 0.05 mm; depth 95 mm }',
      'A long narrow leak, such as the joints between panels.',
    ),
    opening('hole', 'hole cables on back { diameter 20 mm; depth 95 mm }', 'A round hole, such as one for cables.'),
    {
      keyword: 'mic',
      parts: [literal('at'), position],
      block: { name: 'mic', required: false },
      example: 'mic at 0.6 m, 0.5 m, 1.5 m { self-noise 8 dBA }',
      documentation:
        'Where the microphone stands: from the left wall, from the front wall, above the floor, between structural faces.',
    },
    {
      keyword: 'mouth',
      parts: [literal('at'), position],
      example: 'mouth at 0.6 m, 0.7 m, 1.5 m',
      documentation: 'Where the mouth of the performer is, measured like the place of the microphone.',
    },
    {
      keyword: 'equipment',
      parts: [newName('equipment'), title, literal('at'), position],
      block: { name: 'equipment', required: false },
      declares: 'equipment',
      repeats: true,
      example: 'equipment copy "copy holder" at 0.6 m, 0.2 m, 1.3 m { kind copy-stand; tilt 30 deg }',
      documentation:
        'Something that stands or hangs inside, and where its middle is, measured like the place of the microphone.',
    },
    {
      keyword: 'panels',
      parts: [],
      block: { name: 'panels', required: true },
      example: 'panels { width 600 mm; fastened outside }',
      documentation: 'How the faces are cut into panels that can be carried.',
    },
    {
      keyword: 'mounts',
      parts: [quantity('count', 'count'), literal('stiffness'), quantity('stiffness', 'stiffness')],
      example: 'mounts 16 stiffness 200 N/mm',
      documentation: 'Springs or pads under the booth: how many, and the stiffness of each.',
    },
    {
      keyword: 'stands',
      parts: [literal('at'), { kind: 'position', axes: ['x', 'y'] }],
      example: 'stands at 0.05 m, 0.05 m',
      documentation:
        'Where the booth stands in its room: its outside left front corner, from the left and from the front wall of the room.',
    },
    {
      keyword: 'contents',
      parts: [quantity('value', 'mass')],
      default: 'contents',
      example: 'contents 40 kg',
      documentation: 'Furniture and equipment that stays inside.',
    },
  ],
};

/** Kept here so that the tables of layers stand in one place only. */
export const layerFacts: readonly Fact[] = [airFact, layerFact];
