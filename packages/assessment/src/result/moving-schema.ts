import { boolean, list, nullable, number, record, ref, string } from './schema-parts.js';

const passes = { enum: ['goes', 'tight', 'does-not-go'] } as const;
const side = { enum: ['front', 'back', 'left', 'right'] } as const;
const integer = { type: 'integer' } as const;

const panelWay = record({
  way: string,
  passes,
  pose: { enum: ['upright', 'on-its-side', 'flat', 'tilted', 'leaning', 'leaning-on-its-side'] },
  angleDeg: number,
  diagonal: boolean,
  leftM: { type: 'number', description: 'Negative by how much it is too large.' },
  lengthM: { type: 'number', description: 'Straight floor along the way when held so.' },
  longestM: nullable(number),
  text: string,
});

const card = record(
  {
    panel: nullable(integer),
    name: string,
    face: string,
    widthM: number,
    heightM: number,
    thicknessM: number,
    massKg: number,
    massKnown: boolean,
    people: { type: 'integer', description: 'By common practice, from mass and size.' },
    props: boolean,
    ways: list(panelWay),
    raised: nullable(
      record({
        diagonalM: number,
        leftOnRoomFloorM: number,
        leftInPlaceM: number,
        passes,
        text: string,
      }),
    ),
  },
  'One panel as helpers hold it on moving day.',
);

const roof = record({
  said: { enum: ['lift', 'slide', null] },
  thicknessM: number,
  wallTopM: number,
  ceilingM: number,
  ceilingIs: string,
  aboveBoothM: number,
  overWallsM: number,
  lift: record({ needsM: number, passes }),
  slide: record({
    needsM: number,
    passes,
    from: nullable(list(record({ side, freeM: number, needsM: number }))),
    sides: nullable(list(side)),
  }),
  text: string,
});

/** Of `BoothResult.moving`; null without a room, a way in or panels. */
export const movingSchema = nullable(
  record(
    {
      ways: list(record({ name: string, kind: { enum: ['doorway', 'lift', 'passage'] }, range: ref('range') })),
      cards: list(card),
      roof: nullable(roof),
      sides: nullable(
        list(record({ side, toWallM: number, freeM: number, obstacle: nullable(string), reachable: boolean })),
      ),
      obstacles: list(
        record({
          name: string,
          range: ref('range'),
          collides: boolean,
          gapM: number,
          aboveM: nullable(number),
          move: nullable(record({ towards: side, byM: number, offWallM: number })),
          text: string,
        }),
      ),
      doors: list(
        record({
          door: string,
          range: ref('range'),
          swing: { enum: ['outward', 'inward'] },
          leafM: number,
          freeM: nullable(number),
          before: nullable(string),
          opensDeg: nullable(number),
          text: string,
        }),
      ),
      assembly: nullable(
        record({
          possible: boolean,
          steps: list(
            record({
              step: integer,
              what: string,
              panels: list(integer),
              fastenedFrom: { enum: ['inside', 'outside', null] },
              why: string,
            }),
          ),
          blockedBy: list(string),
          assumes: list(string),
        }),
      ),
      problems: list(record({ id: string, subject: string, text: string, fix: string, range: ref('range') })),
      asks: list(string),
      leavesOut: list(string),
    },
    'Getting the booth in, up and out again: panels through every way, standing up, roof, clearances, order of work.',
  ),
);
