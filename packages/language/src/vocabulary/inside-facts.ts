import { bands, choice, quantity, size3 } from './parts.js';
import type { Block } from './shape.js';
import { EQUIPMENT_KINDS } from './words.js';

export const equipmentBlock: Block = {
  name: 'equipment',
  documentation: 'Something that stands or hangs in the booth: it reflects, weighs, warms or hums.',
  facts: [
    {
      keyword: 'kind',
      parts: [choice('value', ...EQUIPMENT_KINDS)],
      default: 'equipment-kind',
      example: 'kind copy-stand',
      documentation: 'What it is.',
    },
    {
      keyword: 'size',
      parts: [size3],
      example: 'size 320 mm x 10 mm x 460 mm',
      documentation: 'Width x depth x height, upright; without it, it is taken as too small to reflect.',
    },
    {
      keyword: 'tilt',
      parts: [quantity('value', 'angle')],
      default: 'equipment-tilt',
      example: 'tilt 30 deg',
      documentation: 'How far its top leans back, away from the front wall; `0 deg` is upright.',
    },
    {
      keyword: 'stands',
      parts: [],
      example: 'stands',
      documentation: 'It stands on the floor or on something that does.',
    },
    {
      keyword: 'hangs',
      parts: [],
      example: 'hangs',
      documentation: 'It is fixed to a wall or the roof, and shakes with it.',
    },
    {
      keyword: 'mass',
      parts: [quantity('value', 'mass')],
      example: 'mass 3 kg',
      documentation: 'What it weighs; counted besides the `contents` of the booth.',
    },
    {
      keyword: 'heat',
      parts: [quantity('value', 'power')],
      example: 'heat 20 W',
      documentation: 'Power that it turns into heat; counted besides the `heat` of the session.',
    },
    {
      keyword: 'sound-power',
      parts: [bands('value', 'level')],
      example: 'sound-power octave 250 Hz 24 dB, 500 Hz 22 dB, 1 kHz 20 dB',
      documentation: 'Sound power that it radiates, re 1 pW; silent without it.',
    },
    {
      keyword: 'absorbs',
      parts: [quantity('value', 'share')],
      default: 'equipment-absorption',
      example: 'absorbs 80 %',
      documentation: 'Share of the sound of speech that its faces swallow.',
    },
  ],
};

export const panelsBlock: Block = {
  name: 'panels',
  documentation: 'How the faces are cut into panels, and how they are put up.',
  facts: [
    {
      keyword: 'width',
      parts: [quantity('value', 'length')],
      required: true,
      example: 'width 600 mm',
      documentation:
        'Widest panel; a wider face is made of several. A door, and a window that a joint would cut, gets a panel of its own with a post at either side, which may be wider.',
    },
    {
      keyword: 'split',
      parts: [quantity('value', 'length')],
      example: 'split 1.20 m',
      documentation: 'Height of a joint across the walls, above their lower edge; panels of full height without it.',
    },
    {
      keyword: 'fastened',
      parts: [choice('value', 'outside', 'inside')],
      example: 'fastened outside',
      documentation: 'From which side the panels are screwed or latched together.',
    },
    {
      keyword: 'roof',
      parts: [choice('value', 'lift', 'slide')],
      example: 'roof slide',
      documentation: 'How the roof panels get to their place: lifted over the walls, or slid in from one side.',
    },
  ],
};
