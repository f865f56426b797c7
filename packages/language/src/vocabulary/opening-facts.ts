import { amount, choice, optional, quantity, reference, size2 } from './parts.js';
import type { Block, Fact } from './shape.js';
import { POLAR_PATTERNS } from './words.js';

const sizeFact = (what: string): Fact => ({
  keyword: 'size',
  parts: [size2],
  required: true,
  example: 'size 660 mm x 1900 mm',
  documentation: `Width x height of the ${what}.`,
});
const offsetFact: Fact = {
  keyword: 'offset',
  parts: [quantity('value', 'length')],
  example: 'offset 200 mm',
  documentation: 'From the left edge of the face, seen from outside, to the opening.',
};
const depthFact: Fact = {
  keyword: 'depth',
  parts: [quantity('value', 'length')],
  required: true,
  example: 'depth 95 mm',
  documentation: 'Through the wall, from outside to inside.',
};

export const doorBlock: Block = {
  name: 'door',
  documentation: 'A door: its size, its leaf and the gaps that its seals leave.',
  facts: [
    sizeFact('door leaf'),
    offsetFact,
    {
      keyword: 'leaf',
      parts: [reference('what', 'assembly', 'material'), optional(amount('amount'))],
      required: true,
      example: 'leaf solid-core 44 mm',
      documentation: 'What the leaf is made of: an assembly, or a material and its thickness.',
    },
    {
      keyword: 'gap perimeter',
      parts: [quantity('value', 'length')],
      default: 'door-perimeter-gap',
      example: 'gap perimeter 0.1 mm',
      documentation: 'Clear width of the gap that the seal leaves along the sides and the head.',
    },
    {
      keyword: 'gap threshold',
      parts: [quantity('value', 'length')],
      default: 'door-threshold-gap',
      example: 'gap threshold 0.3 mm',
      documentation: 'Clear height of the gap under the door.',
    },
    {
      keyword: 'swing',
      parts: [choice('value', 'outward', 'inward')],
      example: 'swing outward',
      documentation: 'Which way the door opens.',
    },
    {
      keyword: 'lock',
      parts: [choice('value', 'none', 'latch', 'lock')],
      example: 'lock none',
      documentation: 'What keeps the door shut besides its own weight and seals.',
    },
  ],
};

export const windowBlock: Block = {
  name: 'window',
  documentation: 'A window: its size and its pane.',
  facts: [
    { ...sizeFact('pane'), example: 'size 400 mm x 500 mm' },
    offsetFact,
    {
      keyword: 'sill',
      parts: [quantity('value', 'length')],
      example: 'sill 1.20 m',
      documentation: 'From the floor inside to the lower edge of the pane; taken at half height without it.',
    },
    {
      keyword: 'pane',
      parts: [reference('what', 'assembly', 'material'), optional(amount('amount'))],
      required: true,
      example: 'pane acrylic 18 mm',
      documentation:
        'What the pane is made of: an assembly such as two panes with air between, or a material and its thickness.',
    },
  ],
};

export const slitBlock: Block = {
  name: 'slit',
  documentation: 'A long narrow leak.',
  facts: [
    {
      keyword: 'length',
      parts: [quantity('value', 'length')],
      required: true,
      example: 'length 20 m',
      documentation: 'Along the joint.',
    },
    {
      keyword: 'gap',
      parts: [quantity('value', 'length')],
      required: true,
      example: 'gap 0.05 mm',
      documentation: 'Clear width that air can pass.',
    },
    depthFact,
  ],
};

export const holeBlock: Block = {
  name: 'hole',
  documentation: 'A round hole.',
  facts: [
    {
      keyword: 'diameter',
      parts: [quantity('value', 'length')],
      required: true,
      example: 'diameter 20 mm',
      documentation: 'Clear diameter.',
    },
    depthFact,
  ],
};

export const micBlock: Block = {
  name: 'mic',
  documentation: 'The microphone and how it is used.',
  facts: [
    {
      keyword: 'self-noise',
      parts: [quantity('value', 'level')],
      example: 'self-noise 8 dBA',
      documentation: 'Equivalent input noise of the microphone, A-weighted, from its data sheet.',
    },
    {
      keyword: 'distance',
      parts: [quantity('value', 'length')],
      default: 'mic-distance',
      example: 'distance 150 mm',
      documentation: 'From the mouth to the microphone.',
    },
    {
      keyword: 'pattern',
      parts: [choice('value', ...POLAR_PATTERNS)],
      default: 'mic-pattern',
      example: 'pattern cardioid',
      documentation: 'From which sides the microphone hears; it is taken to face the mouth.',
    },
    {
      keyword: 'high-pass',
      parts: [quantity('value', 'frequency')],
      example: 'high-pass 80 Hz',
      documentation: 'Second-order high-pass filter in the recording chain; none without it.',
    },
  ],
};
