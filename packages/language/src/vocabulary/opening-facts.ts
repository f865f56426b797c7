import { amount, bands, choice, literal, optional, quantity, reference, size2 } from './parts.js';
import type { Block, Fact } from './shape.js';

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
      keyword: 'pane',
      parts: [reference('what', 'assembly', 'material'), optional(amount('amount'))],
      required: true,
      example: 'pane acrylic 18 mm',
      documentation:
        'What the pane is made of: an assembly such as two panes with air between, or a material and its thickness.',
    },
  ],
};

export const ventBlock: Block = {
  name: 'vent',
  documentation: 'An air path: its duct, its lining, its bends and its fan.',
  facts: [
    {
      keyword: 'duct',
      parts: [{ kind: 'size', axes: ['width', 'height'], single: 'diameter' }],
      required: true,
      example: 'duct 100 mm x 150 mm',
      documentation: 'Clear width x height of a rectangular duct, or the diameter of a round one.',
    },
    {
      keyword: 'run',
      parts: [quantity('value', 'length')],
      required: true,
      example: 'run 1.2 m',
      documentation: 'Length of the duct along its middle.',
    },
    {
      keyword: 'lined',
      parts: [reference('material', 'material'), optional(amount('amount'))],
      example: 'lined glass-wool 25 mm',
      documentation: 'Porous lining of the duct and its thickness; bare without it.',
    },
    {
      keyword: 'bends',
      parts: [quantity('value', 'count')],
      default: 'vent-bends',
      example: 'bends 3',
      documentation: 'Right-angle bends along the run.',
    },
    {
      keyword: 'insertion-loss',
      parts: [bands('value', 'level')],
      example: 'insertion-loss octave 63 Hz 5 dB, 125 Hz 9 dB',
      documentation: 'Measured or stated loss of the whole air path; replaces the computed one.',
    },
    {
      keyword: 'fan',
      parts: [quantity('flow', 'flow'), optional(literal('sound-power'), bands('power', 'level'))],
      example: 'fan 10 L/s sound-power octave 63 Hz 48 dB, 125 Hz 46 dB',
      documentation: 'A fan on this path: the air it moves, and the sound power it sends into the duct.',
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
      keyword: 'high-pass',
      parts: [quantity('value', 'frequency')],
      example: 'high-pass 80 Hz',
      documentation: 'Second-order high-pass filter in the recording chain; none without it.',
    },
  ],
};
