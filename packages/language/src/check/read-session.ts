import type { Effort, Session } from '../model/booth-spec.js';
import type { Sourced } from '../model/sourced.js';
import type { Statement } from '../syntax/tree.js';
import { type BlockReader, factOf, readBlock, slotOf } from './block-reader.js';
import { type CheckContext, fallback, headerOf, keep, slotRange, wholeOf } from './context.js';
import { idleDefault } from './idle-default.js';
import { readCycle } from './read-cycle.js';
import { factChoice, factNumber, factNumberOr } from './read-value.js';

/** s; nobody sets up for less. Common practice, no source. */
const SHORTEST_SESSION = 600;

export function readSession(ctx: CheckContext, statement: Statement): Session {
  const reader = readBlock(ctx, statement, 'session');
  const voice = factNumber(reader, 'voice', {
    dimension: 'level',
    noun: 'the level of the recorded voice',
    weightings: ['FS'],
    max: 0,
    usual: { min: -40, max: -6, text: 'voices are set between -40 and -6 dBFS RMS' },
  });
  const voiceDefault = voice
    ? undefined
    : fallback<number>(ctx, 'voice-level', 'session: voice', 'level', headerOf(statement));
  const length = factNumberOr(reader, 'length', 'session-length', {
    dimension: 'time',
    noun: 'the length of a session',
    aboveZero: true,
    usual: { min: SHORTEST_SESSION, max: 86_400, text: 'sessions last between ten minutes and a day' },
  });
  const stature = factNumber(reader, 'stature', {
    dimension: 'length',
    noun: 'a body height',
    aboveZero: true,
    max: 3,
    usual: { min: 1, max: 2.2, text: 'people are 1 to 2.2 m tall' },
  })?.sourced;
  return {
    range: wholeOf(statement),
    people: factNumberOr(reader, 'people', 'people', {
      dimension: 'count',
      noun: 'the number of people',
      min: 1,
      whole: true,
      usual: { min: 1, max: 8, text: 'a booth holds 1 to 8 people' },
    }),
    bodyMass: factNumberOr(reader, 'body', 'body-mass', {
      dimension: 'mass',
      noun: 'a body mass',
      aboveZero: true,
      usual: { min: 20, max: 250, text: 'people have 20 to 250 kg' },
    }),
    effort:
      factChoice<Effort>(reader, 'effort') ??
      fallback<Effort>(ctx, 'effort', 'session: effort', 'text', headerOf(statement)),
    length,
    heat: factNumberOr(reader, 'heat', 'session-heat', {
      dimension: 'power',
      noun: 'the heat of equipment',
      min: 0,
      usual: { min: 0, max: 3000, text: 'equipment in a booth gives less than 3 kW' },
    }),
    supplyAir: factNumberOr(reader, 'supply-air', 'supply-air', {
      dimension: 'concentration',
      noun: 'the carbon dioxide of the supply air',
      min: 0,
      usual: { min: 350, max: 5000, text: 'outdoor air has about 420 ppm, occupied rooms up to some thousand' },
    }),
    co2Rate: factNumberOr(reader, 'co2-rate', 'co2-rate', {
      dimension: 'flow',
      noun: 'the carbon dioxide breathed out',
      aboveZero: true,
      usual: { min: 5 / 3_600_000, max: 120 / 3_600_000, text: 'people breathe out 5 to 120 L/h' },
    }),
    voiceLevel: voice
      ? { ...voice.sourced, value: voice.level! }
      : { ...voiceDefault!, value: { decibels: voiceDefault!.value, weighting: 'FS' } },
    fanSpeed: choiceOr<Session['fanSpeed']['value']>(reader, 'fan', 'fan-speed', !hasFan(ctx)),
    starts: readStart(reader),
    cycle: readCycle(reader, length),
    bodyHeat: factNumberOr(reader, 'body-heat', 'body-heat', {
      dimension: 'power',
      noun: 'the dry heat of a person',
      min: 0,
      usual: { min: 40, max: 300, text: 'people give 40 to 300 W of dry heat' },
    }),
    bodyMoisture: factNumberOr(reader, 'body-moisture', 'body-moisture', {
      dimension: 'power',
      noun: 'the heat in the moisture of a person',
      min: 0,
      usual: { min: 10, max: 400, text: 'people give 10 to 400 W bound in moisture' },
    }),
    stature,
    posture: choiceOr<Session['posture']['value']>(reader, 'posture', 'posture', !stature),
  };
}

/** A word out of a list; its default is told only where something depends on it. */
function choiceOr<T extends string>(
  reader: BlockReader,
  keyword: string,
  name: 'fan-speed' | 'posture',
  isIdle: boolean,
): Sourced<T> {
  const { ctx } = idleDefault(reader, keyword, isIdle);
  return (
    factChoice<T>(reader, keyword) ??
    fallback<T>(ctx, name, `${reader.label}: ${keyword}`, 'text', headerOf(reader.header))
  );
}

function hasFan({ program }: CheckContext): boolean {
  return program.statements.some(
    ({ fact, block }) =>
      fact?.keyword === 'booth' &&
      block?.statements.some((opening) => opening.block?.statements.some((line) => line.fact?.keyword === 'fan')),
  );
}

/** `24:00` is the midnight at which the next day begins. */
function readStart(reader: BlockReader): Session['starts'] {
  const statement = factOf(reader, 'starts');
  const slot = statement && slotOf(statement, 'value', 'clock');
  if (!statement || !slot) return undefined;
  return keep(reader.ctx, `${reader.label}: starts`, 'starts', 'clock-time', {
    value: slot.time.seconds % 86_400,
    origin: { kind: 'given' },
    range: slotRange(statement, slot),
    text: slot.time.text,
  });
}
