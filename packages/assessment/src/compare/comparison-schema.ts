import { resultSchema } from '../result/result-schema.js';
import { boolean, byBand, list, nullable, number, record, ref, string } from '../result/schema-parts.js';

// JSON Schema (draft 2020-12) of a comparison; what both sides are told with is that of the result document.

const { range, related, finding, caution, unread } = resultSchema.$defs;
const turn = nullable({ enum: ['better', 'worse'] });
const steps = {
  ...nullable(number),
  description: 'The difference in smallest steps that matter; null where one side is not known.',
};

const told = (name: string) =>
  record({
    gained: list(ref(name)),
    lost: list(ref(name)),
    changed: list(record({ old: ref(name), new: ref(name) })),
  });

const definitions = {
  range,
  related,
  finding,
  caution,
  unread,
  side: record({ name: string, variant: nullable(string), unread: list(ref('unread')) }),
  judged: record({
    text: string,
    verdict: { enum: ['met', 'missed', 'not-assessed'] },
    value: nullable(number),
    limit: number,
    margin: nullable(number),
    atLeast: boolean,
  }),
};

export const comparisonSchema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'boothwright-comparison/1',
  title: 'What changed between two specifications and what that does',
  description:
    'Lists stand with the largest effect first. Null means not there, not known or not assessed, never zero.',
  ...record({
    schema: { const: 'boothwright-comparison/1' },
    old: ref('side'),
    new: ref('side'),
    sameFacts: boolean,
    sameEffect: boolean,
    facts: list(
      record({
        place: string,
        what: string,
        old: nullable(string),
        new: nullable(string),
        oldRange: nullable(ref('range')),
        newRange: nullable(ref('range')),
      }),
    ),
    renamed: list(record({ kind: { enum: ['material', 'assembly'] }, old: string, new: string })),
    requirements: list(
      record({
        turn: { enum: ['lost', 'gained', 'other', 'dropped', 'added', 'worse', 'better'] },
        kind: string,
        booth: nullable(string),
        unit: string,
        old: nullable(ref('judged')),
        new: nullable(ref('judged')),
        limitChanged: boolean,
        steps,
      }),
    ),
    effects: list(
      record({
        of: string,
        topic: {
          enum: ['rating', 'noise', 'recording', 'voice', 'decay', 'air', 'warmth', 'mass', 'size', 'cost'],
        },
        what: string,
        unit: string,
        old: nullable(number),
        new: nullable(number),
        turn,
        steps,
      }),
    ),
    bands: list(
      record({
        of: string,
        what: string,
        unit: string,
        largestHz: nullable(number),
        hz: list(number),
        old: byBand,
        new: byBand,
        turn,
        steps,
      }),
    ),
    findings: told('finding'),
    cautions: told('caution'),
    steps: list(
      record({
        unit: string,
        size: number,
        relative: boolean,
        evidence: { enum: ['judgement', 'common practice'] },
        why: string,
      }),
    ),
  }),
  $defs: definitions,
};
