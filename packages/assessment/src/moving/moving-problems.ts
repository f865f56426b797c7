import type { Booth, Site } from '@boothwright/language';
import { outsideSize } from '../booth/geometry.js';
import type { MovingCard, MovingProblem, MovingResult } from '../result/moving-result.js';
import { joined } from '../text/joined.js';
import { numberRuns } from '../text/number-runs.js';
import { textRange } from '../text/text-range.js';
import { beyondRoom } from './beyond-room.js';
import { ceilingOver } from './ceiling-over.js';
import { metres, millimetresMissing } from './lengths.js';
import { boothBox, rounding } from './place.js';
import { comfortableGap, liftGrip, workingGap } from './practice.js';
import { roofMethod } from './roof-fit.js';
import type { Way } from './ways.js';

type Found = Pick<MovingResult, 'cards' | 'roof' | 'sides' | 'obstacles' | 'doors' | 'assembly'>;

/** What does not go, each with a number and a way out. */
export function movingProblems(
  booth: Booth,
  site: Site | undefined,
  ways: readonly Way[],
  found: Found,
): MovingProblem[] {
  return [
    ...ways.flatMap((way) => wayProblem(booth, way, found.cards)),
    ...raisedProblem(booth, site, found.cards),
    ...heightProblem(booth, site),
    ...planProblem(booth, site),
    ...found.obstacles
      .filter(({ collides }) => collides)
      .map((one): MovingProblem => {
        const move = one.move;
        return {
          id: 'booth-hits-obstacle',
          subject: one.name,
          text: one.text,
          fix:
            move === null
              ? 'make the booth lower or smaller, or choose another place'
              : `let the booth stand ${metres(Math.ceil(move.offWallM * 100 - 1e-6) / 100)} off the wall, or make it ${millimetresMissing(Math.min(0, one.aboveM ?? 0))} lower`,
          range: one.range,
        };
      }),
    ...roofProblem(booth, found.roof),
    ...found.doors
      .filter(({ opensDeg }) => opensDeg !== null && opensDeg < 90)
      .map(
        (door): MovingProblem => ({
          id: 'door-cannot-open',
          subject: door.door,
          text: door.text,
          fix: `leave ${metres(door.leafM)} of free floor before it, or put the door on another face`,
          range: door.range,
        }),
      ),
    ...orderProblem(booth, found),
  ];
}

function wayProblem(booth: Booth, way: Way, cards: readonly MovingCard[]): MovingProblem[] {
  const stuck = cards.filter((card) => through(card, way.name)?.passes === 'does-not-go');
  const worst = stuck
    .map((card) => through(card, way.name))
    .sort((one, two) => (one?.leftM ?? 0) - (two?.leftM ?? 0))[0];
  if (worst === undefined) return [];
  const longest = stuck.flatMap((card) => through(card, way.name)?.longestM ?? []);
  const most = longest.length === stuck.length ? Math.floor(Math.min(...longest) * 100) / 100 : null;
  return [
    {
      id: 'panel-does-not-go-through',
      subject: way.name,
      text: `${carried(stuck)} through ${worst.text}`,
      fix:
        most === null
          ? 'cut them narrower, or bring sheets and frames in and build the panels in the room'
          : `cut them no longer than ${metres(most)}, for walls by a horizontal joint (\`split\`), or bring sheets and frames in and build the panels in the room`,
      range: booth.panels === undefined ? way.range : textRange(booth.panels.range),
    },
  ];
}

function carried(cards: readonly MovingCard[]): string {
  const numbers = cards.flatMap(({ panel }) => panel ?? []);
  const leaves = cards.filter(({ panel }) => panel === null).map(({ name }) => name);
  return joined([...(numbers.length > 0 ? [numberRuns('panel', numbers)] : []), ...leaves]);
}

function through(card: MovingCard, name: string): MovingCard['ways'][number] | undefined {
  return card.ways.find(({ way }) => way === name);
}

function raisedProblem(booth: Booth, site: Site | undefined, cards: readonly MovingCard[]): MovingProblem[] {
  const stuck = cards.filter(({ raised }) => raised?.passes === 'does-not-go');
  const worst = [...stuck].sort((one, two) => (two.raised?.diagonalM ?? 0) - (one.raised?.diagonalM ?? 0))[0]?.raised;
  if (worst === undefined || worst === null || site?.room === undefined) return [];
  return [
    {
      id: 'panel-cannot-be-stood-up',
      subject: 'walls',
      text: `${carried(stuck)} ${worst.text}`,
      fix: 'make them lower, or divide them by a horizontal joint (`split`)',
      range: textRange(booth.panels?.range ?? booth.inside.height.range),
    },
  ];
}

function heightProblem(booth: Booth, site: Site | undefined): MovingProblem[] {
  const room = site === undefined ? undefined : ceilingOver(undefined, site);
  if (room === undefined) return [];
  const height = outsideSize(booth)[2];
  const missing = room.height - height;
  if (missing >= -rounding) return [];
  return [
    {
      id: 'booth-too-high',
      subject: 'ceiling',
      text: `the booth is ${metres(height)} high and the room ${metres(room.height)}: ${millimetresMissing(missing)} missing`,
      fix: 'a lower booth, a thinner roof or floor, or another room',
      range: textRange((booth.outside ?? booth.inside).height.range),
    },
  ];
}

function planProblem(booth: Booth, site: Site | undefined): MovingProblem[] {
  const room = site?.room;
  const beyond = site === undefined ? [] : beyondRoom(booth, site);
  if (room === undefined || beyond.length === 0) return [];
  const [width, depth] = outsideSize(booth);
  const placed = site !== undefined && boothBox(booth, site) !== undefined;
  const fitsAsDrawn = width <= room.width.value && depth <= room.depth.value;
  const fitsTurned = depth <= room.width.value && width <= room.depth.value;
  const by = joined(beyond.map(({ what, byM }) => `${what} by ${metres(byM)}`));
  return [
    {
      id: 'booth-outside-the-room',
      subject: 'room',
      text: placed
        ? `the booth stands through the wall of the room: ${by}`
        : `the booth is larger than the room: ${by}`,
      fix: fitsAsDrawn
        ? 'move it: it fits in the room as drawn'
        : fitsTurned
          ? 'turn it by a right angle: then it fits in the room'
          : 'a smaller booth or another room',
      range: textRange(booth.standsAt?.range ?? (booth.outside ?? booth.inside).width.range),
    },
  ];
}

function roofProblem(booth: Booth, roof: MovingResult['roof']): MovingProblem[] {
  if (roof === null) return [];
  const method = roofMethod(roof);
  if (method !== null && (roof.said === null || method === roof.said)) return [];
  const fix =
    method === null && roof.ceilingIs !== 'ceiling'
      ? `let the booth stand clear of the ${roof.ceilingIs}`
      : method === null
        ? `lower the booth until ${metres(liftGrip)} stay above it, or leave floor before a side to slide the roof on from`
        : method === 'slide'
          ? 'slide it on: `roof slide`'
          : 'lift it on: `roof lift`';
  return [
    {
      id: 'roof-cannot-go-on',
      subject: 'roof',
      text: `the roof ${roof.text}`,
      fix,
      range: textRange(booth.panels?.roof?.range ?? booth.faces.roof?.range ?? booth.nameRange),
    },
  ];
}

function orderProblem(booth: Booth, { assembly, sides, roof }: Found): MovingProblem[] {
  if (assembly === null || assembly.possible) return [];
  // A roof that does not go on is told on its own.
  const walls = assembly.blockedBy.filter(
    (reason) => !(roof !== null && roofMethod(roof) === null && reason.startsWith('the roof ')),
  );
  if (walls.length === 0) return [];
  const tight = sides?.filter(({ reachable }) => !reachable).map(({ side }) => side) ?? [];
  return [
    {
      id: 'no-order',
      subject: 'walls',
      text: `no order of work exists: ${joined(walls)}`,
      fix: `leave ${metres(workingGap)} to ${metres(comfortableGap)} (common practice) at ${tight.length === 0 ? 'the sides' : joined(tight)}${booth.panels?.fastened?.value === 'outside' ? ', or fasten from inside with the door at a side that can be reached' : ', or put the door where people can walk to it'}`,
      range: textRange(booth.panels?.fastened?.range ?? booth.nameRange),
    },
  ];
}
