import { bandNumbers, boolean, byBand, list, nullable, number, record, ref, string } from './schema-parts.js';

const settings = { enum: ['off', 'low', 'high'] } as const;
const verdict = { enum: ['met', 'missed', 'not-assessed'] } as const;

/** Parts of the schema for the noise inside, by name. */
export const noiseDefinitions = {
  noiseAtFanSetting: record({
    setting: settings,
    session: boolean,
    speed: number,
    fan: nullable(ref('levels')),
    airInDucts: nullable(ref('levels')),
    airAtOpenings: nullable(ref('levels')),
    total: ref('levels'),
    roomToneDbFS: nullable(ref('ranged')),
  }),
  roomTone: record({
    dBFS: ref('ranged'),
    weightedDbFS: nullable(number),
    voiceAtCapsuleDbZ: number,
    noiseAtCapsuleDbZ: number,
    voiceSetToDbFS: number,
    effort: string,
    distanceM: number,
    highPassHz: nullable(number),
    pattern: string,
    patternRejectionDb: bandNumbers,
    roomByBand: byBand,
    selfNoiseDbZ: nullable(number),
    shares: record({ octaves: { ...list(number), minItems: 7, maxItems: 7 }, microphone: number }),
    filters: list(record({ highPassHz: nullable(number), dBFS: number })),
    assumptions: list(string),
    note: string,
  }),
  hours: record(
    {
      stateOfHour: { ...list({ type: 'integer' }), minItems: 24, maxItems: 24 },
      states: list(
        record({
          sources: list(string),
          notPredicted: list(string),
          dBA: nullable(ref('ranged')),
          nc: nullable(string),
          verdicts: list(verdict),
        }),
      ),
      requirements: list(
        record({ text: string, range: ref('range'), hoursMet: { type: 'integer' }, met: list(string), words: string }),
      ),
      session: nullable(record({ startsMinutes: number, endsMinutes: number, verdicts: list(verdict), words: string })),
    },
    'Which hours of the day meet which room-tone requirement; stateOfHour points into states.',
  ),
  mounts: record({
    range: ref('range'),
    count: number,
    stiffnessNPerM: number,
    loadedMassKg: number,
    deflectionM: number,
    naturalHz: number,
    gainsAboveHz: number,
    text: string,
  }),
  lowBands: record(
    {
      closedBoxToHz: number,
      firstModeHz: number,
      schroederHz: number,
      panels: list(record({ face: string, wholeHz: number, betweenStudsHz: number })),
      breathing: nullable(record({ hz: number, differenceDb: number })),
      decidedBy: list(
        record({
          model: { enum: ['closed-box', 'walls-and-absorption'] },
          fromHz: number,
          toHz: number,
          lessDb: nullable(number),
        }),
      ),
      decidedText: string,
      halfWidthTo100HzDb: number,
      halfWidthMidDb: number,
      text: string,
    },
    'Where each model of the low bands holds, and how wide the range is there.',
  ),
};

/** The noise of a booth. */
export const noiseSchema = record({
  bySource: list(
    record({
      name: string,
      range: ref('range'),
      outside: ref('levels'),
      inside: ref('levels'),
      shares: list(byBand),
      differenceDbA: nullable(ref('ranged')),
      inTotal: boolean,
    }),
  ),
  fan: nullable(ref('levels')),
  fanParts: list(record({ vent: string, way: { enum: ['duct', 'room'] }, byBand })),
  airInDucts: nullable(ref('levels')),
  airAtOpenings: nullable(ref('levels')),
  airParts: list(record({ vent: string, way: { enum: ['duct', 'grille', 'duct-end'] }, byBand })),
  equipment: list(
    record({ name: string, range: ref('range'), atMicrophone: ref('levels'), distanceM: nullable(number) }),
  ),
  total: ref('levels'),
  bySetting: list(ref('noiseAtFanSetting')),
  notPredicted: list(
    record({
      kind: { enum: ['structure', 'vibration', 'unknown-power'] },
      name: string,
      range: ref('range'),
      why: string,
    }),
  ),
  roomTone: nullable(ref('roomTone')),
  hours: nullable(ref('hours')),
  mounts: nullable(ref('mounts')),
});
