import { bands, choice, hours, literal, newName, position, quantity, reference, size3, title } from './parts.js';
import type { Block, Fact } from './shape.js';
import { NEIGHBOUR_SIDES, PASSAGE_TURNS } from './words.js';

export const passageFact: Fact = {
  keyword: 'passage',
  parts: [newName('passage'), title],
  block: { name: 'passage', required: true },
  declares: 'passage',
  repeats: true,
  example: 'passage stair "cellar stair" { width 0.80 m; headroom 1.90 m; turn quarter; onto 0.90 m }',
  documentation: 'A stretch of the way that every panel must take: a stair, a landing, a corridor.',
};

export const obstacleFact: Fact = {
  keyword: 'obstacle',
  parts: [newName('obstacle'), title, literal('at'), position],
  block: { name: 'obstacle', required: true },
  declares: 'obstacle',
  repeats: true,
  example: 'obstacle pipe "heating pipe" at 0 m, 0 m, 1.98 m { size 4.20 m x 0.08 m x 0.10 m }',
  documentation:
    'A pipe, a radiator, a chimney breast: a box whose left front lower corner stands there, from the left and the front wall of the room and above its floor.',
};

export const neighbourFact: Fact = {
  keyword: 'neighbour',
  parts: [newName('neighbour'), title, choice('side', ...NEIGHBOUR_SIDES)],
  block: { name: 'neighbour', required: false },
  declares: 'neighbour',
  repeats: true,
  example:
    'neighbour nursery "nursery above" above { loss octave 125 Hz 30 dB, 250 Hz 36 dB; area 11.8 m2; volume 27 m3 }',
  documentation: 'Where the voice must not be heard: a room behind a wall or a floor, or a place outdoors.',
};

/** The block of a `noise` and of an `impact`. */
export const noiseBlock: Block = {
  name: 'noise',
  documentation: 'When a noise is there.',
  facts: [
    {
      keyword: 'hours',
      parts: [hours('value')],
      example: 'hours 06:00 to 22:00, 23:00 to 02:00',
      documentation:
        'Hours of the day in which the noise occurs, at any hour without it; a stretch that ends before it begins goes over midnight.',
    },
  ],
};

export const passageBlock: Block = {
  name: 'passage',
  documentation: 'A stretch of the way that every panel must take.',
  facts: [
    {
      keyword: 'width',
      parts: [quantity('value', 'length')],
      required: true,
      example: 'width 0.80 m',
      documentation: 'Clear width at the narrowest place.',
    },
    {
      keyword: 'headroom',
      parts: [quantity('value', 'length')],
      example: 'headroom 1.90 m',
      documentation: 'Least clear height.',
    },
    {
      keyword: 'turn',
      parts: [choice('value', ...PASSAGE_TURNS)],
      default: 'passage-turn',
      example: 'turn quarter',
      documentation:
        'How the way turns there: not at all, by a quarter as around a corner, or by a half as on a landing.',
    },
    {
      keyword: 'onto',
      parts: [quantity('value', 'length')],
      example: 'onto 0.90 m',
      documentation: 'Clear width after the turn; the same as before it when nothing is said.',
    },
  ],
};

export const obstacleBlock: Block = {
  name: 'obstacle',
  documentation: 'Something in the room that the booth and its panels must clear.',
  facts: [
    {
      keyword: 'size',
      parts: [size3],
      required: true,
      example: 'size 4.20 m x 0.08 m x 0.10 m',
      documentation: 'Width x depth x height, in the axes of the room.',
    },
  ],
};

export const neighbourBlock: Block = {
  name: 'neighbour',
  documentation: 'What separates a neighbour from the room around the booth, and the room behind it.',
  facts: [
    {
      keyword: 'through',
      parts: [reference('assembly', 'assembly')],
      example: 'through party-wall',
      documentation: 'The assembly that separates the two.',
    },
    {
      keyword: 'loss',
      parts: [bands('value', 'level')],
      example: 'loss octave 63 Hz 25 dB, 125 Hz 30 dB, 250 Hz 36 dB',
      documentation: 'Measured or stated transmission loss of what separates the two; replaces the computed one.',
    },
    {
      keyword: 'area',
      parts: [quantity('value', 'area')],
      example: 'area 11.8 m2',
      documentation: 'Area of the separating wall or floor.',
    },
    {
      keyword: 'volume',
      parts: [quantity('value', 'volume')],
      example: 'volume 27 m3',
      documentation: 'Volume of the room behind it.',
    },
    {
      keyword: 'reverberation',
      parts: [quantity('value', 'time')],
      default: 'neighbour-reverberation',
      example: 'reverberation 0.5 s',
      documentation: 'Reverberation time of the room behind it.',
    },
    {
      keyword: 'distance',
      parts: [quantity('value', 'length')],
      example: 'distance 5 m',
      documentation: 'Outdoors: from the outer wall to where the voice must not be heard.',
    },
  ],
};
