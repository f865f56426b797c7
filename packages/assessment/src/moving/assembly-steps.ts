import type { Booth } from '@boothwright/language';
import type { AssemblyOrder, AssemblyStep, RoofFit, SideGap } from '../result/moving-result.js';
import { joined } from '../text/joined.js';
import { assemblyOrder, type PutUp } from './assembly-order.js';
import { metres } from './lengths.js';
import { type MovingPanel, outerPanels } from './moving-panel.js';
import { opposite } from './obstacle-fit.js';
import { type Side, sides } from './place.js';
import { workingGap } from './practice.js';
import { roofMethod } from './roof-fit.js';

/** Numbered steps that can be done in this order, or what stands in the way. */
export function assemblySteps(
  booth: Booth,
  panels: readonly MovingPanel[],
  gaps: readonly SideGap[] | null,
  roof: RoofFit | null,
): AssemblyOrder {
  const fastened = booth.panels?.fastened?.value;
  const built = sides.filter((side) => booth.faces[side] !== undefined);
  const found = assemblyOrder({
    walls: built.map((side) => ({ side, columns: columnsOf(panels, side) })),
    reachable: new Set(gaps === null ? sides : gaps.filter(({ reachable }) => reachable).map(({ side }) => side)),
    free: new Map(gaps?.map(({ side, freeM }) => [side, freeM]) ?? []),
    fastened,
    doors: new Set(booth.doors.map(({ face }) => face).filter((face): face is Side => sides.includes(face as Side))),
  });
  const method = roof === null ? null : roofMethod(roof);
  const roofBlocked = roof !== null && method === null;
  const assumes = [
    ...(gaps === null ? ['every side of the booth can be reached from outside'] : []),
    ...(fastened === undefined ? ['each panel can be fastened from inside or outside, as needed'] : []),
    ...(roof === null && booth.faces.roof !== undefined ? ['there is height enough to put the roof on'] : []),
  ];
  if (!found.possible || roofBlocked) {
    const blockedBy = [
      ...(found.possible ? [] : found.blockedBy),
      ...(roofBlocked ? ['the roof can neither be lifted nor slid on'] : []),
    ];
    return { possible: false, steps: [], blockedBy, assumes };
  }
  const steps = [
    ...floorStep(booth, panels),
    ...found.order.map((wall, index) => wallStep(wall, index, found.order, panels, booth, gaps)),
    ...innerShellStep(panels, found.order),
    ...roofStep(booth, panels, roof, method, fastened),
    ...doorStep(booth),
    ...liningStep(booth),
  ];
  return {
    possible: true,
    steps: steps.map((step, index) => ({ step: index + 1, ...step })),
    blockedBy: [],
    assumes,
  };
}

type Step = Omit<AssemblyStep, 'step'>;

function floorStep(booth: Booth, panels: readonly MovingPanel[]): Step[] {
  if (booth.faces.floor === undefined) return [];
  const where =
    booth.standsAt === undefined
      ? ''
      : `, its left front corner ${metres(booth.standsAt.x.value)} from the left wall and ${metres(booth.standsAt.y.value)} from the front wall`;
  return [
    {
      what: `floor: lay it and level it${where}`,
      panels: numbersOf(panels.filter(({ face }) => face === 'floor')),
      fastenedFrom: null,
      why: 'the walls stand on it or around it, and it cannot be levelled under them',
    },
  ];
}

function wallStep(
  wall: PutUp,
  index: number,
  order: readonly PutUp[],
  panels: readonly MovingPanel[],
  booth: Booth,
  gaps: readonly SideGap[] | null,
): Step {
  const { side } = wall;
  const gap = gaps?.find((one) => one.side === side);
  const hold =
    index === 0
      ? 'stand it up and brace it until the next corner is closed'
      : `join it to the ${joined(cornersWith(side, order.slice(0, index)))}`;
  const fasten = wall.heldAtCorners ? 'held by latches on its neighbours' : `fasten from ${wall.from}`;
  const rows = rowsOf(panels, side) > 1 ? ', lower panels first' : '';
  return {
    what: `${side} wall${rows}: ${hold}, ${fasten}`,
    panels: numbersOf(outerPanels(panels, side)),
    fastenedFrom: wall.from,
    why: whyNow(wall, index, order, booth, gap),
  };
}

/** The inner of two shells goes up when the outer stands, and before any roof. */
function innerShellStep(panels: readonly MovingPanel[], order: readonly PutUp[]): Step[] {
  const inner = order.flatMap(({ side }) => panels.filter(({ face, leaf }) => face === side && leaf === 'inner'));
  if (inner.length === 0) return [];
  return [
    {
      what: `inner shell of the walls, in the same order (${joined(order.map(({ side }) => side))}), fasten from inside`,
      panels: numbersOf(inner),
      fastenedFrom: 'inside',
      why: 'the clear air behind it leaves no room for hands: look at the outer shell for leaks before it is covered',
    },
  ];
}

function whyNow(
  { side, brought }: PutUp,
  index: number,
  order: readonly PutUp[],
  booth: Booth,
  gap: SideGap | undefined,
): string {
  const isLast = index === order.length - 1;
  if (gap !== undefined && !gap.reachable) {
    return `${metres(Math.max(0, gap.freeM))} outside it is less than the ${metres(workingGap)} that somebody needs there, so it comes in ${brought} while a side is open`;
  }
  const door = booth.doors.find(({ face }) => face === side);
  if (door !== undefined && isLast) return 'it holds the door: until it stands, people and panels go in and out here';
  if (isLast) return 'the other sides are closed before it; who is inside leaves by the door';
  if (index === 0) return 'a first wall to join the others to';
  return 'it makes a corner with a wall that stands, so both hold without a brace';
}

function roofStep(
  booth: Booth,
  panels: readonly MovingPanel[],
  fit: RoofFit | null,
  method: 'lift' | 'slide' | null,
  fastened: 'inside' | 'outside' | undefined,
): Step[] {
  if (booth.faces.roof === undefined) return [];
  const how = method ?? booth.panels?.roof?.value ?? 'lift';
  const start = fit?.slide.sides?.[0];
  const what =
    how === 'slide'
      ? `roof: slide it on over the walls${start === undefined ? '' : ` from the ${start}`}, on props`
      : 'roof: lift it on from props, nobody under it alone';
  const instead =
    fit !== null && fit.said !== null && fit.said !== how
      ? `it cannot be put on by ${fit.said}, as the text says; `
      : '';
  const over = fit === null ? 'the walls must stand to carry it' : fit.text;
  const shells = panels.filter(({ face }) => face === 'roof');
  const order = [...shells.filter(({ leaf }) => leaf === 'inner'), ...shells.filter(({ leaf }) => leaf !== 'inner')];
  const inner = order[0]?.leaf === 'inner' ? ', the inner shell first' : '';
  return [
    {
      what: `${what}${inner}`,
      panels: numbersOf(order),
      fastenedFrom: fastened ?? 'inside',
      why: `${instead}${over}`,
    },
  ];
}

function doorStep(booth: Booth): Step[] {
  if (booth.doors.length === 0) return [];
  return [
    {
      what: `hang ${joined(booth.doors.map(({ name }) => `the leaf of door ${name}`))}; then look for light and try a card at every joint`,
      panels: [],
      fastenedFrom: null,
      why: 'a leaf hung earlier sags or gets in the way, and leaks cannot be reached behind the lining',
    },
  ];
}

function liningStep(booth: Booth): Step[] {
  if (!booth.linings.some(({ layers }) => layers.length > 0)) return [];
  return [
    {
      what: 'lining, from inside',
      panels: [],
      fastenedFrom: 'inside',
      why: 'not before the joints have been tried for leaks: afterwards they are covered',
    },
  ];
}

function cornersWith(side: Side, before: readonly PutUp[]): string[] {
  return before.filter((other) => other.side !== opposite(side)).map((other) => `${other.side} wall`);
}

function numbersOf(panels: readonly MovingPanel[]): number[] {
  return panels.map(({ number }) => number);
}

/** Panels of a wall beside each other: those of one row. */
function columnsOf(panels: readonly MovingPanel[], side: Side): number {
  return Math.max(1, Math.ceil(outerPanels(panels, side).length / rowsOf(panels, side)));
}

function rowsOf(panels: readonly MovingPanel[], side: Side): number {
  const bases = new Set(outerPanels(panels, side).map(({ baseM }) => Math.round(baseM * 1000)));
  return Math.max(1, bases.size);
}
