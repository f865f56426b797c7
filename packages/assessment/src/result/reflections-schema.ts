import { boolean, list, nullable, number, record, ref, string, triple } from './schema-parts.js';

const extreme = record({ hz: number, levelDb: number });
const place = {
  microphoneM: triple,
  spreadDb: { type: 'number', description: 'Standard deviation of the response, 60 to 300 Hz.' },
  strongestDb: nullable(number),
};

/** Of `BoothResult.reflections`; null without a microphone. */
export const reflectionsSchema = nullable(
  record(
    {
      mouthM: triple,
      mouthStated: boolean,
      microphoneM: triple,
      directM: number,
      limitDb: number,
      early: list(
        record({
          name: string,
          kind: { enum: ['face', 'door', 'window', 'equipment'] },
          range: ref('range'),
          atM: triple,
          delayMs: number,
          pathDifferenceM: number,
          absorption: number,
          levelDb: { type: 'number', description: 'Re the direct sound, as the microphone takes both in.' },
          firstNullHz: number,
          peakDb: number,
          dipDb: nullable(number),
          strong: boolean,
          covered: nullable(record({ levelDb: number, peakDb: number, dipDb: nullable(number) })),
          todo: string,
        }),
      ),
      response: nullable(
        record({ hz: list(number), levelDb: list(number), spreadDb: number, deepest: extreme, highest: extreme }),
      ),
      responseWhy: nullable(string),
      places: list(record(place)),
      best: nullable(record({ ...place, spreadHereDb: number, text: string })),
      loudspeakers: list(
        record({
          name: string,
          range: ref('range'),
          nearest: string,
          distanceM: number,
          firstCancellationHz: number,
          text: string,
        }),
      ),
      leavesOut: list(string),
    },
    'Early reflections at the microphone, the response from mouth to microphone, and better places for both.',
  ),
);
