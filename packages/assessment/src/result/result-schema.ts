import { airCurveSchema, airSchema, ventilationSchema } from './air-schema.js';
import { buildSchema } from './build-schema.js';
import { movingSchema } from './moving-schema.js';
import { noiseDefinitions, noiseSchema } from './noise-schema.js';
import { reflectionsSchema } from './reflections-schema.js';
import { roomSoundSchema } from './room-sound-schema.js';
import {
  bandNumbers,
  bands,
  boolean,
  byBand,
  dictionary,
  list,
  nullable,
  number,
  record,
  ref,
  string,
  triple,
} from './schema-parts.js';
import { voiceAtSchema } from './voice-schema.js';

// JSON Schema (draft 2020-12) of the result document. It says by hand what result-document.ts says to the compiler, so
// that a reader of the printed JSON needs no TypeScript; a test validates real results against it.

const amount = record({ amount: number, currency: string });

const definitions = {
  range: record(
    { file: string, from: { type: 'integer' }, to: { type: 'integer' } },
    'A stretch of the text, UTF-16 offsets.',
  ),
  ranged: record(
    { value: number, low: number, high: number, basis: string },
    'A predicted figure with its range and what the range rests on.',
  ),
  ratings: record({
    stc: number,
    stcGovernedBy: { enum: ['sum', 'single-band'] },
    rw: number,
    c: number,
    ctr: number,
    c50To5000: number,
    ctr50To5000: number,
  }),
  levels: record(levelTotals()),
  ...noiseDefinitions,
  airCurve: airCurveSchema(),
  assembly: record({
    title: nullable(string),
    range: ref('range'),
    panel: record({ widthM: number, heightM: number }, 'The size for which the curve holds.'),
    transmissionLossDb: bandNumbers,
    transmissionLossRangeDb: { ...bandNumbers, description: 'Half-width of the range of the model.' },
    transmissionLossLowDb: {
      ...bandNumbers,
      description: 'Lower end of the range; above a practical ceiling it falls back to that ceiling.',
    },
    transmissionLossHighDb: { ...bandNumbers, description: 'Upper end of the range.' },
    airbornePathDb: bandNumbers,
    framePathDb: nullable(bandNumbers),
    ratings: ref('ratings'),
    surfaceMassKgPerM2: number,
    thicknessM: number,
    resonancesHz: list(number),
    criticalFrequenciesHz: list(record({ layer: string, hz: number })),
    leaves: { type: 'integer' },
    insideAbsorption: bandNumbers,
    layers: list(
      record({ text: string, thicknessM: number, surfaceMassKgPerM2: number, model: string, range: ref('range') }),
    ),
    pricePerM2: nullable(amount),
  }),
  path: record({
    id: string,
    kind: { enum: ['face', 'door', 'door-seal', 'window', 'vent', 'slit', 'hole'] },
    name: string,
    range: ref('range'),
    areaM2: number,
    transmissionLossDb: { ...bandNumbers, description: 'Referred to areaM2; negative for a resonant gap.' },
    notes: { ...list(string), description: 'What the source of the figures does not cover; mostly empty.' },
  }),
  booth: record({
    title: nullable(string),
    range: ref('range'),
    geometry: record({ insideM: triple, outsideM: triple, usableM: triple, volumeM3: number, footprintM2: number }),
    firstModeHz: number,
    schroederHz: number,
    modesHz: list(record({ hz: number, order: { ...triple, items: { type: 'integer' } } })),
    bandModels: {
      type: 'array',
      items: { enum: ['small-enclosure', 'hand-over', 'few-modes', 'statistical', 'not-assessed'] },
      minItems: bands,
      maxItems: bands,
    },
    compositeTransmissionLossDb: bandNumbers,
    ratings: ref('ratings'),
    paths: list(ref('path')),
    noise: noiseSchema,
    lowBands: ref('lowBands'),
    voiceAt: list(voiceAtSchema(levelTotals())),
    voiceOutside: nullable(record({ ...levelTotals(), effort: string, where: string, note: string })),
    reverberation: record({
      absorptionAreaM2: bandNumbers,
      sabineS: byBand,
      eyringS: byBand,
      validFromHz: number,
    }),
    roomSound: roomSoundSchema,
    ventilation: ventilationSchema(),
    air: nullable(airSchema()),
    build: buildSchema,
    moving: movingSchema,
    reflections: reflectionsSchema,
    reflectionsWhy: nullable(string),
  }),
  requirement: record(
    {
      text: string,
      kind: string,
      booth: nullable(string),
      range: ref('range'),
      verdict: { enum: ['met', 'missed', 'not-assessed'] },
      value: nullable(ref('ranged')),
      limit: number,
      unit: string,
      margin: { ...nullable(number), description: 'Positive when met.' },
      withinRange: { ...boolean, description: 'True when the limit lies within the range of the prediction.' },
      limitedBy: nullable(string),
      explanation: string,
    },
    undefined,
    {
      atLeast: {
        const: true,
        description: 'The value is a lower bound: something that belongs to it is not known.',
      },
    },
  ),
  related: list(record({ range: ref('range'), message: string })),
  finding: record({
    id: string,
    severity: { enum: ['error', 'warning', 'information'] },
    range: ref('range'),
    message: string,
    explanation: string,
    source: string,
    fix: string,
    figures: dictionary(number),
    related: ref('related'),
    edits: {
      ...list(
        record({
          kind: { enum: ['value', 'remove', 'fact', 'move'] },
          range: ref('range'),
          text: string,
          from: nullable(ref('range')),
        }),
      ),
      description: 'The text of the fix; empty where it is told in words only.',
    },
  }),
  caution: record({
    id: string,
    severity: { enum: ['stop', 'caution', 'note'] },
    range: ref('range'),
    hazard: string,
    number: nullable(string),
    why: string,
    ask: string,
  }),
  unread: record(
    {
      part: {
        enum: ['use', 'let', 'material', 'assembly', 'site', 'booth', 'session', 'budget', 'require', 'outside'],
      },
      name: nullable(string),
      message: string,
      range: ref('range'),
    },
    'An error of the text, by the declaration that it stands in; outside is a line outside every declaration.',
  ),
  allowance: record(
    {
      id: string,
      kind: nullable({ enum: ['finding', 'caution'] }),
      reason: string,
      range: ref('range'),
      state: { enum: ['allowed', 'refused', 'unused', 'unknown'] },
      told: list(string),
      note: string,
    },
    'A comment of the text that allows a finding or a caution, and what became of it.',
  ),
  defaultUsed: record({ name: string, value: string, evidence: string, source: string, range: ref('range') }),
  variant: record({
    title: nullable(string),
    assemblies: dictionary(ref('assembly')),
    booths: dictionary(ref('booth')),
    requirements: list(ref('requirement')),
    findings: list(ref('finding')),
    cautions: list(ref('caution')),
    unread: list(ref('unread')),
    written: {
      ...list(record({ text: string, range: ref('range') })),
      description: 'What the variant changes, as the text has it.',
    },
    changes: list(record({ what: string, base: nullable(number), variant: nullable(number), unit: string })),
  }),
};

function levelTotals() {
  return {
    byBand,
    dBA: nullable(ref('ranged')),
    dBZ: nullable(ref('ranged')),
    nc: nullable(record({ value: nullable(number), text: string, governingHz: nullable(number) })),
  };
}

/** JSON Schema of `ResultDocument`, draft 2020-12; also printed to schema/result.schema.json. */
export const resultSchema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'boothwright-result/1',
  title: 'Result of an assessment',
  description:
    'Arrays by band follow grid.nominalHz. A null in them means not known or not assessed, never zero. Units stand in the keys; limits and values of requirements are in the unit beside them.',
  ...record({
    schema: { const: 'boothwright-result/1' },
    file: string,
    grid: record({ kind: { const: 'third-octave' }, nominalHz: bandNumbers }),
    air: record({
      temperatureC: number,
      relativeHumidity: number,
      densityKgPerM3: number,
      soundSpeedMPerS: number,
    }),
    assemblies: dictionary(ref('assembly')),
    booths: dictionary(ref('booth')),
    requirements: list(ref('requirement')),
    findings: list(ref('finding')),
    cautions: list(ref('caution')),
    unread: {
      ...list(ref('unread')),
      description: 'Parts of the text that could not be read; nothing that depends on them is judged.',
    },
    defaults: list(ref('defaultUsed')),
    leavesOut: list(string),
    variants: dictionary(ref('variant')),
    allowances: list(ref('allowance')),
  }),
  $defs: definitions,
};
