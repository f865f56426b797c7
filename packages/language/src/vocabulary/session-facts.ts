import { choice, literal, newName, quantity, title } from './parts.js';
import type { Block, Fact } from './shape.js';
import { EFFORTS } from './words.js';

export const sessionFact: Fact = {
  keyword: 'session',
  parts: [],
  block: { name: 'session', required: true },
  example: 'session { people 1; effort normal; length 90 min }',
  documentation: 'How the booth is used: who is in it, how loud, how long.',
};

export const sessionBlock: Block = {
  name: 'session',
  documentation: 'How the booth is used.',
  facts: [
    {
      keyword: 'people',
      parts: [quantity('value', 'count')],
      default: 'people',
      example: 'people 1',
      documentation: 'How many people are inside.',
    },
    {
      keyword: 'body',
      parts: [quantity('value', 'mass')],
      default: 'body-mass',
      example: 'body 80 kg',
      documentation: 'Body mass of each of them, for the load on the floor.',
    },
    {
      keyword: 'effort',
      parts: [choice('value', ...EFFORTS)],
      default: 'effort',
      example: 'effort raised',
      documentation: 'How loud the voice is.',
    },
    {
      keyword: 'length',
      parts: [quantity('value', 'time')],
      default: 'session-length',
      example: 'length 90 min',
      documentation: 'How long the door stays shut.',
    },
    {
      keyword: 'heat',
      parts: [quantity('value', 'power')],
      default: 'session-heat',
      example: 'heat 25 W',
      documentation: 'Power of lamps and equipment inside.',
    },
    {
      keyword: 'supply-air',
      parts: [quantity('value', 'concentration')],
      default: 'supply-air',
      example: 'supply-air 600 ppm',
      documentation: 'Carbon dioxide in the air that the vents draw.',
    },
    {
      keyword: 'co2-rate',
      parts: [quantity('value', 'flow')],
      default: 'co2-rate',
      example: 'co2-rate 20 L/h',
      documentation: 'Carbon dioxide that each person breathes out.',
    },
    {
      keyword: 'voice',
      parts: [quantity('value', 'level')],
      default: 'voice-level',
      example: 'voice -20 dBFS',
      documentation: 'RMS level to which the recorded voice is set.',
    },
  ],
};

export const budgetFact: Fact = {
  keyword: 'budget',
  parts: [],
  block: { name: 'budget', required: true },
  example: 'budget { item plywood 7 at 38.00 EUR; reserve 10 % }',
  documentation: 'What is bought, and what is kept back.',
};

export const budgetBlock: Block = {
  name: 'budget',
  documentation: 'What is bought, and what is kept back.',
  facts: [
    {
      keyword: 'item',
      parts: [
        newName('item'),
        title,
        quantity('quantity', 'count'),
        literal('at'),
        { kind: 'price', slot: 'price', per: false },
      ],
      declares: 'item',
      repeats: true,
      example: 'item gasket "compression gasket, m" 44 at 0.90 EUR',
      documentation: 'A position of the shopping list: how many, at what price each.',
    },
    {
      keyword: 'reserve',
      parts: [quantity('value', 'share')],
      default: 'budget-reserve',
      example: 'reserve 10 %',
      documentation: 'Share of the sum kept back for what was forgotten.',
    },
  ],
};
