import type { DimensionName } from '../units/dimension.js';
import { bands, choice, either, literal, newName, optional, quantity, reference, text, title } from './parts.js';
import type { Block, Fact, Part } from './shape.js';

export const measuredFact: Fact = {
  keyword: 'measured',
  parts: [newName('measured'), title],
  block: { name: 'measured', required: true },
  declares: 'measured',
  repeats: true,
  example: 'measured first-night { booth alcove; date "2026-05-14"; room-tone 22 dBA }',
  documentation: 'What was measured after the build, to be set beside what is predicted. It changes no prediction.',
};

/** One reading, or a table by band. */
const reading = (dimension: DimensionName): Part =>
  either([bands('bands', dimension)], [quantity('reading', dimension)]);

function single(keyword: string, dimension: DimensionName, example: string, documentation: string): Fact {
  return { keyword, parts: [quantity('reading', dimension)], example: `${keyword} ${example}`, documentation };
}

export const measuredBlock: Block = {
  name: 'measured',
  documentation: 'Where, when and with what was measured, and what came out.',
  facts: [
    {
      keyword: 'booth',
      parts: [reference('booth', 'booth')],
      example: 'booth alcove',
      documentation: 'The booth that was measured; it may be left out where the text has one.',
    },
    {
      keyword: 'date',
      parts: [text('value')],
      example: 'date "2026-05-14"',
      documentation: 'The day, as year, month and day.',
    },
    {
      keyword: 'instrument',
      parts: [text('value')],
      example: 'instrument "class 2 sound level meter, checked at 94 dB"',
      documentation: 'What was measured with, and how it was checked.',
    },
    {
      keyword: 'fan',
      parts: [choice('value', 'off', 'low', 'high')],
      example: 'fan low',
      documentation: 'How the fans ran meanwhile.',
    },
    {
      keyword: 'room-tone',
      parts: [reading('level')],
      example: 'room-tone octave 63 Hz 34 dB, 125 Hz 28 dB, 250 Hz 20 dB',
      documentation: 'The level at the microphone with nobody speaking: one reading, or levels by band.',
    },
    {
      keyword: 'isolation',
      parts: [literal('against'), reference('against', 'noise'), reading('level')],
      repeats: true,
      example: 'isolation against tram third 100 Hz 24 dB, 125 Hz 27 dB',
      documentation:
        'How much quieter one noise of the site is inside than outside: one reading, or differences by band.',
    },
    {
      keyword: 'voice-outside',
      parts: [quantity('reading', 'level'), optional(literal('in'), reference('where', 'neighbour'))],
      repeats: true,
      example: 'voice-outside 31 dBA in nursery',
      documentation: 'The performer’s voice in the room around the booth, or at a neighbour.',
    },
    {
      keyword: 'reverberation',
      parts: [reading('time')],
      example: 'reverberation octave 125 Hz 0.31 s, 250 Hz 0.24 s',
      documentation: 'The reverberation time inside: one figure, or times by band.',
    },
    single('co2', 'concentration', '1150 ppm', 'Carbon dioxide inside at the end of the session.'),
    single(
      'temperature-rise',
      'temperature-difference',
      '3 K',
      'By how much the air inside was warmer than the room around it at the end of the session.',
    ),
    single('mass', 'mass', '385 kg', 'What the booth weighs.'),
    {
      keyword: 'recording',
      parts: [text('path'), optional(literal('full-scale'), quantity('full-scale', 'level'))],
      repeats: true,
      example: 'recording "./first-night.wav" full-scale 110 dB',
      documentation:
        'A recording of the room tone below the workspace folder, as a WAV file, and the level that its full scale stands for.',
    },
  ],
};
