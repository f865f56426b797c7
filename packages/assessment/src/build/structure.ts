import type { Booth, Face, Site } from '@boothwright/language';
import { faceNames, outsideSize } from '../booth/geometry.js';
import type { StructureResult } from '../result/parts-result.js';
import { decimals } from '../text/decimals.js';
import { airBoxes } from './air-boxes.js';
import { deckCarriesWalls } from './face-extents.js';
import { genericDesignLoads } from './generic-design-loads.js';
import { gravity } from './gravity.js';
import type { MassPart } from './mass.js';

const walls = ['front', 'back', 'left', 'right'] as const;

/** Sentence beside every load. */
export const notACheck = 'Show this to a qualified person: it is not a check of the floor.';

/**
 * Loads where they act. Line load of a wall: (wall + its doors, windows and lining + its share of the roof with lining) x g
 * / length of its bottom edge, N/m. The roof spans the shorter side and rests half on either of the two walls at the ends
 * of its span. Deck, people and contents stand on the deck. With springs the whole booth stands on them, taken as evenly
 * loaded; corners bear more.
 */
export function structureOf(
  booth: Booth,
  site: Site | undefined,
  masses: readonly MassPart[],
  linings: ReadonlyMap<Face, number>,
  loadedMassKg: number,
  patchPa: number,
): StructureResult {
  const kg = (part: string) => masses.find((entry) => entry.part === part)?.kg ?? 0;
  const [width, depth] = outsideSize(booth);
  const roofCarriers: readonly Face[] = depth >= width ? ['left', 'right'] : ['front', 'back'];
  const roof = kg('roof') + (linings.get('roof') ?? 0);
  const openings = (face: Face) =>
    booth.doors.filter((door) => door.face === face).reduce((sum, door) => sum + kg(`door ${door.name}`), 0) +
    booth.windows.filter((w) => w.face === face).reduce((sum, w) => sum + kg(`window ${w.name}`), 0);
  const running = site?.joists?.value;
  const lineLoads = walls.flatMap((face) => {
    if (booth.faces[face] === undefined) return [];
    const massKg = kg(face) + openings(face) + (linings.get(face) ?? 0) + (roofCarriers.includes(face) ? roof / 2 : 0);
    const lengthM = face === 'front' || face === 'back' ? width : depth;
    const axis = face === 'front' || face === 'back' ? 'width' : 'depth';
    const joists = running === undefined ? null : running === axis ? ('along' as const) : ('across' as const);
    return [{ face, lengthM, massKg, nPerM: (massKg * gravity) / lengthM, joists }];
  });
  const carried = lineLoads.reduce((sum, line) => sum + line.massKg, 0);
  return {
    patchPa,
    beside: [
      { name: 'bedrooms, North America', kPa: genericDesignLoads.bedroom, source: secondHand },
      { name: 'homes elsewhere', kPa: genericDesignLoads.homes, source: secondHand },
      { name: 'other rooms of homes, North America', kPa: genericDesignLoads.otherRooms, source: secondHand },
    ].map(({ name, kPa, source }) => ({ name, pa: kPa * 1000, ratio: patchPa / (kPa * 1000), source })),
    lineLoads,
    deckMassKg: Math.max(0, loadedMassKg - carried),
    perMountN: booth.mounts === undefined ? null : (loadedMassKg * gravity) / booth.mounts.count.value,
    joistWords: joistWords(lineLoads, site),
    notCounted: notCounted(booth),
    words: deckCarriesWalls(booth)
      ? `The walls stand on the deck, which spreads them over the springs. ${notACheck}`
      : notACheck,
  };
}

const secondHand =
  'uniform design load of homes, quoted second-hand from discussions of codes; not read in a code and not a limit for this floor';

function joistWords(lines: StructureResult['lineLoads'], site: Site | undefined): string | null {
  if (lines.length === 0) return null;
  if (site?.joists === undefined) {
    return site?.floor?.kind.value === 'concrete'
      ? null
      : 'The text does not say which way the joists run: a wall along them can stand on one.';
  }
  const along = lines.filter(({ joists }) => joists === 'along');
  const across = lines.filter(({ joists }) => joists === 'across');
  const heaviest = (of: StructureResult['lineLoads']) => Math.max(0, ...of.map(({ nPerM }) => nPerM));
  const names = (of: StructureResult['lineLoads']) => of.map(({ face }) => face).join(' and ');
  if (along.length === 0) return null;
  const start = `${names(along)} run along the joists, so that one or two joists may bear each of them, up to ${decimals(heaviest(along) / 1000, 2)} kN/m`;
  if (heaviest(along) <= heaviest(across)) {
    return `${start}; the heavier ${names(across)} lie across and rest on several. Of the two ways to turn the booth this is the gentler one.`;
  }
  return `${start}. Turned by a quarter, these heavier walls would lie across and rest on several.`;
}

function notCounted(booth: Booth): string[] {
  return [
    'hinges, latches, handles, gaskets, screws and glue',
    ...(booth.vents.length > 0 ? ['ducts, grilles and fans'] : []),
    ...airBoxes(booth)
      .filter(({ board }) => board === undefined)
      .map(({ owner }) => `the ${owner}, whose board is not given`),
    ...faceNames
      .filter((face) => face !== 'floor' && booth.faces[face] === undefined)
      .map((face) => `the ${face}, whose build-up is not given`),
  ];
}
