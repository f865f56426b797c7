import type { Size3 } from '../model/booth-spec.js';
import type { Sourced } from '../model/sourced.js';
import type { Neighbour } from '../model/surroundings.js';
import type { Statement } from '../syntax/tree.js';
import { assemblyNamed } from './assembly-names.js';
import { type BlockReader, factOf, isUnfinished, readBlock, wordIn } from './block-reader.js';
import { headerOf, hearing, warn } from './context.js';
import { eachNamed } from './each-named.js';
import { idleDefault } from './idle-default.js';
import { factNumber, factNumberOr, readBands, wordOf } from './read-value.js';

export function readNeighbours(outer: BlockReader, room: Size3 | undefined): Neighbour[] {
  const { ctx } = outer;
  return eachNamed(outer, ['neighbour'], (statement, named) => {
    const label = `neighbour ${named.name}`;
    const side = wordOf<Neighbour['side']['value']>(ctx, statement, 'side', label);
    if (!side) return undefined;
    const isOutdoors = side.value === 'outdoors';
    const reader = readBlock(ctx, statement, label);
    const area = factNumber(reader, 'area', {
      dimension: 'area',
      noun: 'the area of what separates a neighbour',
      aboveZero: true,
      usual: { min: 0.5, max: 200, text: 'walls and floors have 0.5 to 200 m2' },
    })?.sourced;
    const volume = factNumber(reader, 'volume', {
      dimension: 'volume',
      noun: 'the volume of a room',
      aboveZero: true,
      usual: { min: 3, max: 5000, text: 'rooms have 3 to 5000 m3' },
    })?.sourced;
    const distance = factNumber(reader, 'distance', {
      dimension: 'length',
      noun: 'a distance',
      aboveZero: true,
      usual: { min: 0.5, max: 500, text: 'neighbours outdoors are 0.5 to 500 m away' },
    })?.sourced;
    if (area && room) checkArea(reader, area, side.value, room);
    reportIdle(reader, isOutdoors);
    return {
      ...named,
      side,
      separation: readSeparation(reader, statement),
      area,
      volume,
      reverberation: factNumberOr(
        idleDefault(reader, 'reverberation', isOutdoors),
        'reverberation',
        'neighbour-reverberation',
        {
          dimension: 'time',
          noun: 'a reverberation time',
          aboveZero: true,
          usual: { min: 0.05, max: 10, text: 'rooms have 0.05 to 10 s' },
        },
      ),
      distance,
    };
  });
}

function readSeparation(reader: BlockReader, header: Statement): Neighbour['separation'] {
  const { ctx, label } = reader;
  const through = factOf(reader, 'through');
  const measured = factOf(reader, 'loss');
  const name = through && wordIn(through, 'assembly');
  const assembly = name && assemblyNamed(hearing(ctx, through), name.word, name.range);
  const loss =
    measured &&
    readBands(ctx, measured, 'value', {
      dimension: 'level',
      noun: 'a transmission loss',
      label: `${label}: loss`,
      fact: 'loss',
      weightings: ['none'],
      usual: { min: 0, max: 100, text: 'walls and floors lose 0 to 100 dB' },
    });
  if (through && measured)
    warn(ctx, 'separation-twice', headerOf(through), `${label} has both \`through\` and \`loss\`: the loss counts`, {
      hint: 'remove one of the two',
      related: [{ range: headerOf(measured), message: 'the loss stands here' }],
    });
  if (!through && !measured && header.complete && !isUnfinished(reader))
    warn(
      ctx,
      'neighbour-unassessable',
      headerOf(header),
      `${label} does not say what separates it, so the voice there cannot be worked out`,
      { hint: 'add `through` and the name of an assembly, or `loss` and its bands' },
    );
  if (loss) return { kind: 'loss', loss };
  return assembly && { kind: 'assembly', assembly };
}

/** The area is that of one wall, or of the floor or the ceiling, of the room around the booth at most. */
function checkArea(
  { ctx }: BlockReader,
  area: Sourced<number>,
  side: Neighbour['side']['value'],
  { width, depth, height }: Size3,
): void {
  const isFlat = side === 'above' || side === 'below';
  const most = isFlat ? width.value * depth.value : Math.max(width.value, depth.value) * height.value;
  if (area.value <= most * 1.01) return;
  warn(
    ctx,
    'area-too-large',
    area.range,
    `\`${area.text ?? ''}\` is more than the ${isFlat ? 'floor' : 'largest wall'} of the room around the booth, ${Math.round(most * 10) / 10} m2`,
    {
      hint: 'only what the two rooms have in common counts',
      related: [{ range: width.range, message: 'the room is this large' }],
    },
  );
}

/** Facts of a room that is none, and a distance where there is a wall. */
function reportIdle({ ctx, facts }: BlockReader, isOutdoors: boolean): void {
  for (const keyword of isOutdoors ? ['volume', 'reverberation'] : ['distance']) {
    const statement = facts.get(keyword)?.[0];
    if (statement)
      warn(
        ctx,
        'fact-without-effect',
        headerOf(statement),
        `\`${keyword}\` says nothing about a neighbour ${isOutdoors ? 'outdoors' : 'that is a room'}`,
        { hint: 'remove it' },
      );
  }
}
