import type { Booth, Door, Site } from '@boothwright/language';
import { assemblyMass } from '../assembly/surface-mass.js';
import { assemblyThickness } from '../assembly/thickness.js';
import type { Memo } from '../memo/memo.js';
import type { MovingCard, MovingResult } from '../result/moving-result.js';
import { assemblySteps } from './assembly-steps.js';
import { doorSwing } from './door-swing.js';
import { lifters } from './lifters.js';
import type { MovingPanel } from './moving-panel.js';
import { movingProblems } from './moving-problems.js';
import { obstacleFit } from './obstacle-fit.js';
import { panelRaised } from './panel-raised.js';
import { panelWay } from './panel-way.js';
import { boothBox, type Side, sides } from './place.js';
import { roofFit } from './roof-fit.js';
import { sideGaps } from './side-gaps.js';
import { type Way, waysOf } from './ways.js';

/**
 * Getting a booth in, up and out again: every panel through every way, standing it up, the roof, the clearances around, an
 * order of work. Null where the text has neither a room nor a way to bring panels in, and does not cut the booth into panels.
 */
export function movingResult(
  booth: Booth,
  site: Site | undefined,
  { panels, massByPart }: Built,
  memo: Memo,
): MovingResult | null {
  const ways = site === undefined ? [] : waysOf(site);
  if (site?.room === undefined && ways.length === 0 && booth.panels === undefined) return null;
  const box = boothBox(booth, site);
  const gaps = box === undefined || site === undefined ? null : sideGaps(box, site);
  const cards = [...panels, ...(panels.length > 0 ? booth.doors.map((door) => leafOf(door, massByPart)) : [])].map(
    (panel) => cardOf(panel, ways, site, memo),
  );
  const roof = site === undefined ? null : roofFit(booth, site, box, gaps, panels);
  const obstacles =
    box === undefined || site === undefined ? [] : site.obstacles.map((obstacle) => obstacleFit(obstacle, box, site));
  const doors = booth.doors.map((door) => doorSwing(door, box, site));
  const assembly = booth.panels === undefined ? null : assemblySteps(booth, panels, gaps, roof);
  const found = { cards, roof, sides: gaps, obstacles, doors, assembly };
  return {
    ways: ways.map(({ name, kind, range }) => ({ name, kind, range })),
    ...found,
    problems: movingProblems(booth, site, ways, found),
    asks: asksOf(booth, site),
    leavesOut: leavesOutOf(ways),
  };
}

/** What is known of the build. */
interface Built {
  readonly panels: readonly MovingPanel[];
  readonly massByPart: readonly { readonly part: string; readonly kg: number }[];
}

type Carried = Omit<MovingPanel, 'number' | 'leaf' | 'box'> & { readonly number: number | null };

/** The leaf of a door is carried on its own and hung when all else stands. */
function leafOf(door: Door, massByPart: Built['massByPart']): Carried {
  const { layers } = door.leaf;
  const widthM = door.size.width.value;
  const heightM = door.size.height.value;
  return {
    number: null,
    name: `leaf of door ${door.name}`,
    face: door.face,
    widthM,
    heightM,
    thicknessM: assemblyThickness(layers),
    // With the sticks that the leaf is really framed of, where they are cut, so that it weighs the same everywhere.
    massKg: massByPart.find(({ part }) => part === `door ${door.name}`)?.kg ?? assemblyMass(layers) * widthM * heightM,
    massMissing: [],
    baseM: 0,
  };
}

function cardOf(panel: Carried, ways: readonly Way[], site: Site | undefined, memo: Memo): MovingCard {
  const { number, name, face, widthM, heightM, thicknessM, massKg } = panel;
  const size = { width: widthM, height: heightM, thickness: thicknessM };
  const isWall = number !== null && sides.includes(face as Side);
  const room = site?.room?.height.value;
  return {
    panel: number,
    name,
    face,
    widthM,
    heightM,
    thicknessM,
    massKg,
    massKnown: panel.massMissing.length === 0,
    ...lifters({ face, widthM, heightM, massKg }),
    ways: ways.map((way) => panelWay(size, way, memo)),
    raised: isWall && room !== undefined ? panelRaised(heightM, thicknessM, panel.baseM, room) : null,
  };
}

function asksOf(booth: Booth, site: Site | undefined): string[] {
  const asks: string[] = [];
  if (booth.panels === undefined) {
    asks.push(
      '`panels { width 600 mm; fastened inside; roof lift }` in the booth says how its faces are cut and put up; without it no panel is checked',
    );
  } else {
    if (booth.panels.fastened === undefined)
      asks.push('`fastened inside` or `outside` in `panels` decides which sides must be reached');
    if (booth.panels.roof === undefined) asks.push('`roof lift` or `slide` in `panels` says how the roof goes on');
  }
  if (site?.room === undefined) {
    asks.push('`room` in the site gives the ceiling under which panels are stood up');
  } else if (booth.standsAt === undefined) {
    asks.push('`stands at` in the booth gives the clearances to walls and obstacles');
  }
  if (site === undefined || waysOf(site).length === 0) {
    asks.push('`doorway`, `lift` and `passage` in the site say what the panels must go through');
  }
  for (const passage of site?.passages ?? []) {
    if (passage.headroom === undefined)
      asks.push(`\`headroom\` of ${passage.name}: without it only its plan is judged`);
  }
  for (const door of booth.doors) {
    if (door.swing === undefined) asks.push(`\`swing\` of door ${door.name}: it is taken to open outwards`);
  }
  return asks;
}

function leavesOutOf(ways: readonly Way[]): string[] {
  return [
    ...(ways.length > 0
      ? [
          'Panels are rigid boxes: handles, hands, handrails, door leaves that stand open and the slope of stairs are not in the sum.',
          'A passage counts as level, with its headroom at the turn. On a flight a panel of width w held plumb needs w x tan(slope) more; carry it along the slope on its long edge.',
          'Ways to hold a panel are upright, on its long edge, flat, tilted in its plane or leaning; turned and leant at once is not tried.',
        ]
      : []),
    ...(ways.some(({ kind }) => kind === 'lift')
      ? ['The opening of the lift door is not known: only the car is judged.']
      : []),
  ];
}
