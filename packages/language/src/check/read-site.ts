import type { Site } from '../model/booth-spec.js';
import type { Statement } from '../syntax/tree.js';
import { type BlockReader, factOf, readBlock, slotOf, titleOf } from './block-reader.js';
import { type CheckContext, keep, slotRange, warn, wholeOf } from './context.js';
import { idleDefault } from './idle-default.js';
import { opensOutdoors } from './opens-outdoors.js';
import { readAppliances } from './read-appliances.js';
import { readNeighbours } from './read-neighbours.js';
import { readSources } from './read-noise.js';
import { readObstacles } from './read-obstacles.js';
import { readPassages } from './read-passages.js';
import { readSize2, readSize3 } from './read-size.js';
import { factChoice, factNumber, factNumberOr, numberIn } from './read-value.js';

export function readSite(ctx: CheckContext, statement: Statement): Site {
  const reader = readBlock(ctx, statement, 'site');
  const titled = titleOf(statement) as { title?: string };
  const room = readSize3(reader, 'room');
  const temperature = factNumberOr(reader, 'temperature', 'air-temperature', {
    ...TEMPERATURE,
    noun: 'a temperature',
    usual: { min: 0, max: 45, text: 'rooms have 0 to 45 degC' },
  });
  const coldSurface = factNumber(reader, 'cold-surface', {
    ...TEMPERATURE,
    noun: 'the temperature of a cold surface',
    usual: { min: -20, max: 30, text: 'the inner side of an outer wall has -20 to 30 degC' },
  })?.sourced;
  if (coldSurface && coldSurface.value > temperature.value)
    warn(ctx, 'cold-surface-warm', coldSurface.range, 'the coldest surface is warmer than the air of the room', {
      hint: 'check both temperatures',
      related: [{ range: temperature.range, message: `the air has ${temperature.value} degC` }],
    });
  return {
    title: titled.title,
    range: wholeOf(statement),
    room,
    reverberation: factNumberOr(reader, 'reverberation', 'room-reverberation', {
      dimension: 'time',
      noun: 'a reverberation time',
      aboveZero: true,
      usual: { min: 0.05, max: 10, text: 'rooms have 0.05 to 10 s' },
    }),
    doorway: readSize2(reader, 'doorway'),
    lift: readSize3(reader, 'lift'),
    floor: readFloor(reader),
    joists: factChoice<'width' | 'depth'>(reader, 'joists'),
    temperature,
    humidity: factNumberOr(reader, 'humidity', 'air-humidity', {
      dimension: 'share',
      noun: 'relative humidity',
      min: 0,
      max: 1,
    }),
    coldSurface,
    ...readAir(reader),
    alarm: readAlarm(reader),
    sources: readSources(reader),
    appliances: readAppliances(reader),
    passages: readPassages(reader),
    obstacles: readObstacles(reader, room),
    neighbours: readNeighbours(reader, room),
  };
}

const TEMPERATURE = { dimension: 'temperature', min: -50, max: 60 } as const;

/** Carbon dioxide outdoors and people in the room are told as assumed only where the air of the room is worked out. */
function readAir(reader: BlockReader): Pick<Site, 'outdoorAir' | 'freshAir' | 'occupants'> {
  const freshAir = factNumber(reader, 'fresh-air', {
    dimension: 'flow',
    noun: 'the fresh air of a room',
    min: 0,
    usual: { min: 0, max: 0.5, text: 'rooms get 0 to 500 L/s of outdoor air' },
  })?.sourced;
  const isDrawn = freshAir !== undefined || opensOutdoors(reader.ctx.program);
  return {
    freshAir,
    outdoorAir: factNumberOr(idleDefault(reader, 'outdoor-air', !isDrawn), 'outdoor-air', 'outdoor-air', {
      dimension: 'concentration',
      noun: 'the carbon dioxide outdoors',
      min: 0,
      usual: { min: 350, max: 700, text: 'outdoor air has 400 to 600 ppm' },
    }),
    occupants: factNumberOr(idleDefault(reader, 'occupants', !freshAir), 'occupants', 'occupants', {
      dimension: 'count',
      noun: 'the number of people in the room',
      min: 0,
      whole: true,
      usual: { min: 0, max: 30, text: 'rooms hold 0 to 30 people' },
    }),
  };
}

function readAlarm(reader: BlockReader): Site['alarm'] {
  const alarm = factNumber(reader, 'alarm', {
    dimension: 'level',
    noun: 'the level of an alarm',
    weightings: ['A'],
    usual: { min: 40, max: 110, text: 'alarms reach 40 to 110 dBA' },
  });
  return alarm?.level && { ...alarm.sourced, value: alarm.level };
}

function readFloor(reader: BlockReader): Site['floor'] {
  const statement = factOf(reader, 'floor');
  const kind = statement && slotOf(statement, 'kind', 'word');
  if (!statement || !kind) return undefined;
  const limit = numberIn(reader.ctx, statement, 'limit', {
    dimension: 'pressure',
    noun: 'a floor load',
    label: 'site: floor limit',
    fact: 'floor',
    aboveZero: true,
    usual: { min: 200, max: 50_000, text: 'floors are designed for 0.2 to 50 kPa' },
    isLoad: true,
  });
  const range = slotRange(statement, kind);
  return {
    kind: keep(reader.ctx, 'site: floor', 'floor', 'text', {
      value: kind.word as 'timber' | 'concrete' | 'unknown',
      origin: { kind: 'given' },
      range,
      text: kind.word,
    }),
    limit: limit?.sourced,
  };
}
