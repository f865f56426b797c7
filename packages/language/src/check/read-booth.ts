import type { Assembly, Booth, Face, Lining, Size3 } from '../model/booth-spec.js';
import type { Sourced, SourceRange } from '../model/sourced.js';
import type { Statement } from '../syntax/tree.js';
import { andList } from '../text/and-list.js';
import { FACES, WALLS } from '../vocabulary/words.js';
import { assemblyNamed } from './assembly-names.js';
import {
  type BlockReader,
  factOf,
  factsOf,
  isUnfinished,
  nameOf,
  readBlock,
  slotOf,
  titleOf,
  wordIn,
} from './block-reader.js';
import { checkGeometry } from './check-geometry.js';
import { type CheckContext, complain, fallback, headerOf, hearing, keep, wholeOf } from './context.js';
import { assemblyThickness, isPartial, readLayers } from './read-assembly.js';
import { readEquipment } from './read-equipment.js';
import { readMicrophone } from './read-microphone.js';
import { readMounts } from './read-mounts.js';
import { type OpeningBase, openingBase, readDoor, readHole, readSlit, readWindow } from './read-openings.js';
import { readPanels } from './read-panels.js';
import { readPlace } from './read-place.js';
import { readSize3 } from './read-size.js';
import { readStandsAt } from './read-stands-at.js';
import { factNumberOr, numberIn } from './read-value.js';
import { readVent } from './vent/read-vent.js';

/** Undefined when not even the size is known. */
export function readBooth(ctx: CheckContext, statement: Statement): Booth | undefined {
  const named = nameOf(statement);
  if (!named) return undefined;
  const reader = readBlock(ctx, statement, `booth ${named.name}`);
  const faces = readFaces(reader);
  const outside = readSize3(reader, 'outside');
  const inside = readSize3(reader, 'inside') ?? insideFromOutside(reader, outside, faces);
  const things = readThings(reader);
  const linings = factsOf(reader, 'lining').flatMap((line) => readLining(ctx, line, reader.label));
  const mic = factOf(reader, 'mic');
  const microphone = mic && readMicrophone(ctx, mic);
  const mouthLine = factOf(reader, 'mouth');
  const mouth = mouthLine && readPlace(ctx, mouthLine, 'the place of the mouth', 'mouth');
  const panels = readPanels(reader);
  const mounts = readMounts(reader);
  const standsAt = readStandsAt(reader);
  const contents = factNumberOr(reader, 'contents', 'contents', {
    dimension: 'mass',
    noun: 'the mass of the contents',
    min: 0,
    usual: { min: 0, max: 2000, text: 'booths hold less than 2 tonnes' },
  });
  if (!inside) return undefined;
  const booth: Booth = {
    ...named,
    ...titleOf(statement),
    range: wholeOf(statement),
    outside,
    inside,
    faces,
    linings,
    ...things,
    microphone,
    mouth,
    contents,
    panels,
    mounts,
    standsAt,
  };
  checkGeometry(ctx, booth);
  return booth;
}

type Faces = Booth['faces'];

function readFaces(reader: BlockReader): Faces {
  const { ctx, header } = reader;
  const of = (keyword: string): { assembly: Assembly; range: SourceRange } | undefined => {
    const statement = factOf(reader, keyword);
    const name = statement && wordIn(statement, 'assembly');
    const assembly = name && assemblyNamed(hearing(ctx, statement), name.word, name.range);
    return name && assembly && { assembly, range: name.range };
  };
  const walls = of('walls');
  const faces = Object.fromEntries(
    FACES.map((face) => [
      face,
      of(face) ?? ((WALLS as readonly string[]).includes(face) && !reader.facts.has(face) ? walls : undefined),
    ]),
  ) as Record<Face, Faces[Face]>;
  const missing = FACES.filter(
    (face) => !reader.facts.has(face) && !((WALLS as readonly string[]).includes(face) && reader.facts.has('walls')),
  );
  if (missing.length > 0 && header.complete && header.block && !isUnfinished(reader)) {
    const list =
      missing.length >= 4 && WALLS.every((face) => missing.includes(face))
        ? ['walls', ...missing.filter((face) => face === 'roof' || face === 'floor')]
        : missing;
    // Without `inside` the size of the booth hangs on every face, so that one of them missing is no small thing.
    const isNeeded = reader.facts.has('outside') && !reader.facts.has('inside');
    const unknown = isNeeded
      ? 'the inside follows from `outside` and the layers of every face, unless you add `inside W x D x H`'
      : 'what comes through is unknown until then';
    complain(
      ctx,
      'face-missing',
      headerOf(header),
      `${reader.label} does not say what its ${andList(list)} ${list.length > 1 || list[0] === 'walls' ? 'are' : 'is'} made of`,
      {
        severity: isNeeded ? 'error' : 'warning',
        lacks: list,
        hint: `add ${andList(list.map((face) => `\`${face} …\``))} with the name of an assembly; ${unknown}`,
      },
    );
  }
  return faces;
}

const AXES = [
  ['width', 'left', 'right'],
  ['depth', 'front', 'back'],
  ['height', 'roof', 'floor'],
] as const;

/** Without `inside`, the outside less the layers of both faces; an error when that is not known either. */
function insideFromOutside(reader: BlockReader, outside: Size3 | undefined, faces: Faces): Size3 | undefined {
  const { ctx, header } = reader;
  if (reader.facts.has('inside') || !header.complete || !header.block) return undefined;
  const made = AXES.map(([axis, first, second]) => {
    const layers = [faces[first], faces[second]].map((face) => face && assemblyThickness(face.assembly.layers));
    if (!outside || layers[0] === undefined || layers[1] === undefined) return undefined;
    const value = outside[axis].value - layers[0] - layers[1];
    if (value <= 0) return undefined;
    const sourced: Sourced<number> = {
      value,
      origin: { kind: 'given', evidence: 'derived', source: 'outside less the layers of both faces' },
      range: outside[axis].range,
    };
    return keep(ctx, `${reader.label}: inside ${axis}`, 'inside', 'length', sourced);
  });
  const [width, depth, height] = made;
  if (width && depth && height) return { width, depth, height };
  if (!isUnfinished(reader) && !isReported(reader, outside, faces)) reportNoInside(reader, outside, faces);
  return undefined;
}

/** True when the inside is unknown only because of what has been complained about: the outside, a face or a layer. */
function isReported(reader: BlockReader, outside: Size3 | undefined, faces: Faces): boolean {
  if (reader.facts.has('outside') && !outside) return true;
  const isStated = (face: Face): boolean =>
    reader.facts.has(face) || (reader.facts.has('walls') && (WALLS as readonly string[]).includes(face));
  if (outside && !FACES.every(isStated)) return true;
  if (FACES.some((face) => faces[face] && isPartial(faces[face].assembly.layers))) return true;
  return FACES.some((face) => isStated(face) && !faces[face]);
}

function reportNoInside({ ctx, header, label }: BlockReader, outside: Size3 | undefined, faces: Faces): void {
  for (const [axis, first, second] of outside ? AXES : []) {
    const [one, two] = [faces[first], faces[second]].map((face) => face && assemblyThickness(face.assembly.layers));
    if (one === undefined || two === undefined || one + two < outside![axis].value) continue;
    const [layers, size] = [one + two, outside![axis].value].map((value) => `${Math.round(value * 10_000) / 10} mm`);
    complain(
      ctx,
      'layers-fill-booth',
      outside![axis].range,
      `the layers of \`${first}\` and \`${second}\` are ${layers} together and leave nothing of the outside ${axis} of ${size}`,
      { hint: 'check the outside and the layers' },
    );
    return;
  }
  const hint = outside
    ? 'add `inside W x D x H`; it follows from `outside` only when the layers of every face have a thickness'
    : 'add `inside W x D x H`, between the structural faces';
  complain(ctx, 'fact-missing', headerOf(header), `${label} has no \`inside\``, { hint });
}

type Things = Pick<Booth, 'doors' | 'windows' | 'vents' | 'slits' | 'holes' | 'equipment'>;

/** What has a name in the booth; openings and equipment share their names, since paths and reports do not tell them apart. */
function readThings(reader: BlockReader): Things {
  const { ctx } = reader;
  const names = new Map<string, SourceRange>();
  const each = <T>(keyword: string, read: (statement: Statement) => T | undefined): T[] =>
    factsOf(reader, keyword).flatMap((statement) => {
      const named = nameOf(statement);
      if (!named) return [];
      const twin = names.get(named.name);
      if (twin) {
        const sort = keyword === 'equipment' ? 'something' : 'an opening';
        complain(ctx, 'name-twice', named.nameRange, `${sort} called \`${named.name}\` is already in ${reader.label}`, {
          related: [{ range: twin, message: 'the first stands here' }],
        });
        return [];
      }
      names.set(named.name, named.nameRange);
      const thing = read(statement);
      return thing ? [thing] : [];
    });
  const opening =
    <T>(read: (ctx: CheckContext, statement: Statement, base: OpeningBase) => T | undefined) =>
    (statement: Statement): T | undefined => {
      const base = openingBase(statement);
      return base && read(ctx, statement, base);
    };
  return {
    doors: each('door', opening(readDoor)),
    windows: each('window', opening(readWindow)),
    vents: each('vent', opening(readVent)),
    slits: each('slit', opening(readSlit)),
    holes: each('hole', opening(readHole)),
    equipment: each('equipment', (statement) => readEquipment(ctx, statement)),
  };
}

function readLining(ctx: CheckContext, statement: Statement, label: string): Lining[] {
  const slot = slotOf(statement, 'faces', 'words');
  const layers = readLayers(ctx, statement, `${label}, lining`);
  if (!slot) return [];
  const faces = [...new Set(slot.words.flatMap(({ word }) => (word === 'walls' ? WALLS : [word as Face])))];
  const cover =
    numberIn(ctx, statement, 'cover', {
      dimension: 'share',
      noun: 'the cover of a lining',
      label: `${label}: lining cover`,
      fact: 'lining',
      min: 0,
      max: 1,
    })?.sourced ?? fallback<number>(ctx, 'lining-cover', `${label}: lining cover`, 'share', headerOf(statement));
  return layers.length === 0 ? [] : [{ faces, layers, cover, range: wholeOf(statement) }];
}
