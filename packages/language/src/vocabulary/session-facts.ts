import { fittingWords } from './fitting-words.js';
import { amount, choice, clock, literal, newName, optional, quantity, reference, title } from './parts.js';
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
      documentation:
        'Carbon dioxide that each person breathes out. Stated, it holds for any effort; open, it grows with the effort of the voice.',
    },
    {
      keyword: 'fan',
      parts: [choice('value', 'off', 'low', 'high')],
      default: 'fan-speed',
      example: 'fan low',
      documentation: 'At which setting the fans run.',
    },
    {
      keyword: 'starts',
      parts: [clock('value')],
      example: 'starts 13:00',
      documentation: 'Time of day at which the session starts, to know which noises fall into it.',
    },
    {
      keyword: 'take',
      parts: [
        quantity('take', 'time'),
        literal('rest'),
        quantity('rest', 'time'),
        optional(literal('fan'), choice('fan', 'on', 'off')),
      ],
      example: 'take 12 min rest 5 min fan off',
      documentation:
        'Takes with the door shut, rests with it open, and whether the fans run in the takes, which they do unless it is said; one unbroken stretch without it.',
    },
    {
      keyword: 'body-heat',
      parts: [quantity('value', 'power')],
      default: 'body-heat',
      example: 'body-heat 90 W',
      documentation: 'Dry heat of each person.',
    },
    {
      keyword: 'body-moisture',
      parts: [quantity('value', 'power')],
      default: 'body-moisture',
      example: 'body-moisture 50 W',
      documentation: 'Heat of each person that is bound in the moisture of breath and skin.',
    },
    {
      keyword: 'stature',
      parts: [quantity('value', 'length')],
      example: 'stature 1.74 m',
      documentation: 'Body height of the tallest performer.',
    },
    {
      keyword: 'posture',
      parts: [choice('value', 'stands', 'sits')],
      default: 'posture',
      example: 'posture sits',
      documentation: 'Whether the performer stands or sits.',
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
        optional(literal('for'), reference('material', 'material'), {
          kind: 'optional',
          parts: [amount('thickness')],
          beforeCount: true,
        }),
        quantity('quantity', 'count'),
        literal('at'),
        { kind: 'price', slot: 'price', per: false },
      ],
      declares: 'item',
      repeats: true,
      example: 'item boards "gypsum board 1.2 x 2.4 m" for gypsum-board 12.5 mm 18 at 11.00 EUR',
      documentation: `A position of the shopping list: what it is \`for\`, how many, at what price each. It can be for a material, or by the metre or piece for ${fittingWords.map((word) => `\`${word}\``).join(', ')}; a duct may have its diameter.`,
    },
    {
      keyword: 'kerf',
      parts: [quantity('value', 'length')],
      default: 'saw-kerf',
      example: 'kerf 3 mm',
      documentation: 'What the saw takes with each cut.',
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
