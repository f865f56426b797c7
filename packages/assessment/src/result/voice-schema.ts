import { list, nullable, number, record, ref, string } from './schema-parts.js';

const effort = { enum: ['casual', 'normal', 'raised', 'loud', 'shout', 'full-shout'] } as const;

/** The voice at one place outside the booth. */
export function voiceAtSchema(levelTotals: Record<string, object>) {
  return record(
    {
      place: nullable(string),
      title: string,
      side: { enum: ['room', 'above', 'below', 'beside', 'outdoors'] },
      range: nullable(ref('range')),
      byEffort: list(record({ effort, at1mDbA: number, dBA: nullable(ref('ranged')) })),
      session: nullable(record({ ...levelTotals, effort })),
      missing: list(string),
      note: string,
    },
    'The room around the booth has no name in place.',
  );
}
