import { amount, bands, choice, literal, optional, pairs, quantity, reference, size2, size3 } from './parts.js';
import type { Block, Part } from './shape.js';

const boards: Part = optional(literal('of'), reference('board', 'material'), optional(amount('boardAmount')));
const lined: Part = optional(literal('lined'), reference('material', 'material'), optional(amount('amount')));

export const ventBlock: Block = {
  name: 'vent',
  documentation: 'An air path: its duct, its lining, its bends, the boxes and the grille on its way, and its fan.',
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
      parts: [
        optional(choice('direction', 'supply', 'exhaust')),
        quantity('flow', 'flow'),
        optional(literal('sound-power'), bands('power', 'level')),
      ],
      block: { name: 'fan', required: false },
      default: 'fan-low-speed',
      example: 'fan supply 10 L/s sound-power octave 63 Hz 48 dB, 125 Hz 46 dB { place outside }',
      documentation:
        'A fan on this path: whether it blows in or draws out, the air it moves at full speed, and the sound power it sends into the duct.',
    },
    {
      keyword: 'chamber',
      parts: [size3, boards, lined],
      repeats: true,
      example: 'chamber 400 mm x 300 mm x 300 mm of osb 18 mm lined glass-wool 25 mm',
      documentation:
        'A box that the air passes from end to end along its longest side: inside, before its lining; what it is built of, and its lining. In order from the room towards the booth.',
    },
    {
      keyword: 'maze',
      parts: [
        quantity('turns', 'count'),
        literal('turns'),
        literal('leg'),
        quantity('leg', 'length'),
        literal('channel'),
        size2,
        optional(literal('angle'), quantity('angle', 'angle')),
        boards,
        lined,
      ],
      default: 'maze-angle',
      example: 'maze 6 turns leg 250 mm channel 80 mm x 300 mm lined glass-wool 25 mm',
      documentation:
        'A box of boards that turn the air again and again: how often, how far from turn to turn along the middle, and the clear width x height of the channel; what it is built of, and its lining.',
    },
    {
      keyword: 'grille',
      parts: [size2, optional(literal('free'), quantity('free', 'share'))],
      default: 'grille-free-area',
      example: 'grille 250 mm x 150 mm free 60 %',
      documentation: 'The face at the end inside the booth: width x height, and how much of it is open.',
    },
    {
      keyword: 'opens-to',
      parts: [choice('value', 'room', 'outdoors', 'next-room', 'appliance-room')],
      default: 'vent-opens-to',
      example: 'opens-to room',
      documentation:
        'Where the far end draws or blows its air: the room around the booth, outdoors, another room, or one with a burning appliance.',
    },
    {
      keyword: 'wall',
      parts: [choice('value', 'smooth', 'flexible')],
      default: 'duct-wall',
      example: 'wall flexible',
      documentation: 'The inner face of the duct: a smooth pipe or board, or a flexible hose.',
    },
  ],
};

export const fanBlock: Block = {
  name: 'fan',
  documentation: 'What a data sheet says of a fan, and where it hangs.',
  facts: [
    {
      keyword: 'curve',
      parts: [pairs('points', 'flow', 'pressure')],
      example: 'curve 0 L/s 120 Pa, 20 L/s 80 Pa, 40 L/s 0 Pa',
      documentation:
        'Pressure at each flow at full speed, by rising flow, from the data sheet; with it the flow follows from what the air path sets against the fan.',
    },
    {
      keyword: 'low',
      parts: [quantity('value', 'share')],
      default: 'fan-low-speed',
      example: 'low 60 %',
      documentation: 'Speed at the setting `low`, of full speed.',
    },
    {
      keyword: 'place',
      parts: [choice('value', 'outside', 'in-wall', 'inside')],
      example: 'place outside',
      documentation: 'Where the fan hangs: at the far end of the duct, in the wall, or inside the booth.',
    },
  ],
};
