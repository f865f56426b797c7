import { bands, choice, either, literal, newName, optional, quantity, size2, size3, title } from './parts.js';
import type { Block, Fact } from './shape.js';
import { neighbourFact, obstacleFact, passageFact } from './surroundings-facts.js';
import { APPLIANCE_PLACES, NOISE_SHAPES } from './words.js';

export const siteFact: Fact = {
  keyword: 'site',
  parts: [title],
  block: { name: 'site', required: true },
  example: 'site "back bedroom" { noise tram 64 dBA like road-traffic }',
  documentation: 'The room the booth stands in and the noise there.',
};

export const siteBlock: Block = {
  name: 'site',
  documentation: 'The room the booth stands in and the noise there.',
  facts: [
    {
      keyword: 'room',
      parts: [size3],
      example: 'room 3.60 m x 3.10 m x 2.45 m',
      documentation: 'Width x depth x height of the room around the booth.',
    },
    {
      keyword: 'reverberation',
      parts: [quantity('value', 'time')],
      default: 'room-reverberation',
      example: 'reverberation 0.5 s',
      documentation: 'Reverberation time of the room around the booth.',
    },
    {
      keyword: 'doorway',
      parts: [size2],
      example: 'doorway 760 mm x 1980 mm',
      documentation: 'Width x height of the narrowest door that every panel must pass.',
    },
    {
      keyword: 'lift',
      parts: [size3],
      example: 'lift 1.00 m x 1.20 m x 2.10 m',
      documentation: 'Width x depth x height of the lift car that every panel must fit.',
    },
    {
      keyword: 'floor',
      parts: [
        choice('kind', 'timber', 'concrete', 'unknown'),
        optional(literal('limit'), quantity('limit', 'pressure')),
      ],
      example: 'floor timber limit 1.5 kPa',
      documentation: 'What carries the booth, and the load it is designed for when that is known.',
    },
    {
      keyword: 'joists',
      parts: [literal('along'), choice('value', 'width', 'depth')],
      example: 'joists along depth',
      documentation: 'Which way the joists of a timber floor run, in the axes of the room.',
    },
    {
      keyword: 'temperature',
      parts: [quantity('value', 'temperature')],
      default: 'air-temperature',
      example: 'temperature 20 degC',
      documentation: 'Temperature of the air.',
    },
    {
      keyword: 'humidity',
      parts: [quantity('value', 'share')],
      default: 'air-humidity',
      example: 'humidity 50 %',
      documentation: 'Relative humidity of the air.',
    },
    {
      keyword: 'cold-surface',
      parts: [quantity('value', 'temperature')],
      example: 'cold-surface 8 degC',
      documentation: 'Temperature of the coldest surface that the air of the booth may meet, such as an outer wall.',
    },
    {
      keyword: 'outdoor-air',
      parts: [quantity('value', 'concentration')],
      default: 'outdoor-air',
      example: 'outdoor-air 420 ppm',
      documentation: 'Carbon dioxide outdoors.',
    },
    {
      keyword: 'fresh-air',
      parts: [quantity('value', 'flow')],
      example: 'fresh-air 6 L/s',
      documentation: 'Outdoor air that the room around the booth gets; nothing is assumed without it.',
    },
    {
      keyword: 'occupants',
      parts: [quantity('value', 'count')],
      default: 'occupants',
      example: 'occupants 1',
      documentation: 'People in the room around the booth, besides those inside.',
    },
    {
      keyword: 'alarm',
      parts: [quantity('value', 'level')],
      example: 'alarm 85 dBA',
      documentation: 'Level of the smoke alarm at the outside of the booth.',
    },
    {
      keyword: 'noise',
      parts: [
        newName('noise'),
        title,
        either(
          [bands('levels', 'level')],
          [quantity('reading', 'level'), literal('like'), choice('shape', ...NOISE_SHAPES)],
        ),
      ],
      block: { name: 'noise', required: false },
      declares: 'noise',
      repeats: true,
      example: 'noise tram octave 63 Hz 58 dB, 125 Hz 52 dB, 250 Hz 46 dB',
      documentation:
        'A noise in the room at the booth’s place: levels by octave or third-octave band, or one reading with the shape of a known spectrum.',
    },
    {
      keyword: 'impact',
      parts: [newName('impact'), title],
      block: { name: 'noise', required: false },
      declares: 'impact',
      repeats: true,
      example: 'impact footsteps "neighbour walking"',
      documentation:
        'Footfall or other sound that comes through the structure: named so that nobody forgets it, not predicted.',
    },
    {
      keyword: 'appliance',
      parts: [
        newName('appliance'),
        title,
        choice('flue', 'open-flued', 'room-sealed', 'unknown'),
        optional(choice('where', ...APPLIANCE_PLACES)),
      ],
      declares: 'appliance',
      repeats: true,
      example: 'appliance boiler open-flued next-room',
      documentation:
        'A burning appliance nearby, and where it burns as seen from the booth; an open-flued one takes its air from the room.',
    },
    passageFact,
    obstacleFact,
    neighbourFact,
  ],
};
