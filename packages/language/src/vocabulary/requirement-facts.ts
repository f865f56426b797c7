import type { DimensionName } from '../units/dimension.js';
import { either, literal, optional, quantity, reference } from './parts.js';
import type { Fact } from './shape.js';

/** Every booth of the text must meet it, unless one is named. */
const ofOneBooth = optional(literal('for'), reference('booth', 'booth'));

function atMost(what: string, dimension: DimensionName, example: string, documentation: string): Fact {
  return {
    keyword: `require ${what}`,
    parts: [literal('<='), quantity('limit', dimension), ofOneBooth],
    repeats: true,
    example,
    documentation,
  };
}

function rating(what: 'stc' | 'rw', long: string): Fact {
  return {
    keyword: `require ${what}`,
    parts: [literal('of'), reference('assembly', 'assembly'), literal('>='), quantity('limit', 'count')],
    repeats: true,
    example: `require ${what} of shell >= 40`,
    documentation: `The ${long} of an assembly must reach this.`,
  };
}

export const requirementFacts: readonly Fact[] = [
  atMost(
    'room-tone',
    'level',
    'require room-tone <= 20 dBA',
    'The noise at the microphone may be at most this: in dBA, in dB unweighted, as a noise criterion such as `NC 15`, or in dBFS as recorded.',
  ),
  {
    keyword: 'require reverberation',
    parts: [
      either(
        [
          literal('within'),
          quantity('min', 'time'),
          literal('..'),
          quantity('max', 'time'),
          optional(
            literal('from'),
            quantity('from', 'frequency'),
            optional(literal('to'), quantity('to', 'frequency')),
          ),
        ],
        [literal('<='), quantity('max', 'time'), optional(literal('at'), quantity('at', 'frequency'))],
      ),
      ofOneBooth,
    ],
    repeats: true,
    example: 'require reverberation <= 0.30 s at 125 Hz',
    documentation:
      'The reverberation time inside: at most this, at one band or at all, or within a range over a range of bands.',
  },
  {
    keyword: 'require isolation',
    parts: [literal('>='), quantity('limit', 'level'), literal('against'), reference('against', 'noise'), ofOneBooth],
    repeats: true,
    example: 'require isolation >= 32 dB against tram',
    documentation: 'By how much the booth must lower one noise of the site, A-weighted.',
  },
  {
    keyword: 'require voice-outside',
    parts: [
      literal('<='),
      quantity('limit', 'level'),
      optional(literal('in'), reference('where', 'neighbour')),
      ofOneBooth,
    ],
    repeats: true,
    example: 'require voice-outside <= 27 dBA in nursery',
    documentation: 'The performer’s voice in the room around the booth, or at a neighbour, may be at most this.',
  },
  {
    keyword: 'require decay-ratio',
    parts: [literal('<='), quantity('limit', 'count'), literal('at'), quantity('at', 'frequency'), ofOneBooth],
    repeats: true,
    example: 'require decay-ratio <= 2 at 125 Hz',
    documentation:
      'The decay inside at this band may last at most this many times as long as on average from 500 Hz to 2 kHz.',
  },
  rating('stc', 'sound transmission class'),
  rating('rw', 'weighted sound reduction index'),
  atMost(
    'co2',
    'concentration',
    'require co2 <= 1000 ppm',
    'Carbon dioxide inside at the end of the session may be at most this.',
  ),
  atMost(
    'temperature-rise',
    'temperature-difference',
    'require temperature-rise <= 4 K',
    'The air inside may get at most this much warmer than the room around the booth in the session.',
  ),
  atMost('mass', 'mass', 'require mass <= 400 kg', 'The booth may weigh at most this.'),
  atMost(
    'floor-load',
    'pressure',
    'require floor-load <= 1.5 kPa',
    'The load on the floor, booth and people together over the footprint, may be at most this.',
  ),
  atMost('panel-weight', 'mass', 'require panel-weight <= 32 kg', 'Each panel may weigh at most this.'),
  atMost('height', 'length', 'require height <= 2.25 m', 'The booth may be at most this high outside.'),
  {
    keyword: 'require cost',
    parts: [literal('<='), quantity('limit', 'money')],
    repeats: true,
    example: 'require cost <= 1900 EUR',
    documentation: 'The budget with its reserve may be at most this, for all booths of the text together.',
  },
];
