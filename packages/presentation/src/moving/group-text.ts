import type { MovingCard, PanelWay } from '@boothwright/assessment';
import { isImperial } from '../numbers/shown.js';
import { imperialPer, millimetresText, roomLeftText } from '../numbers/trade-units.js';
import type { CardGroup } from './card-groups.js';
import { panelNumbers } from './panel-numbers.js';
import { poseText } from './pose-text.js';

/** `panels 1–9 (walls): 600 × 2136 × 95 mm, 31 kg, two people; upright everywhere, 42 mm left at the doorway`. */
export function groupText({ kind, cards }: CardGroup): string {
  const first = cards[0];
  if (first === undefined) return '';
  const inImperial = isImperial();
  const size = [
    lengths(cards.map(({ widthM }) => widthM)),
    lengths(cards.map(({ heightM }) => heightM)),
    lengths(cards.map(({ thicknessM }) => thicknessM)),
  ].join(' × ');
  const known = cards.every(({ massKnown }) => massKnown);
  const mass = `${known ? '' : 'more than '}${inImperial ? `${span(cards.map(({ massKg }) => massKg * imperialPer.pounds))} lb` : `${span(cards.map(({ massKg }) => massKg))} kg`}`;
  const people = `${counted(first.people)}${first.props ? ' and props' : ''}`;
  const ways = waysText(cards);
  const named =
    kind === 'leaf'
      ? cards.map(({ name }) => name).join(', ')
      : `${panelNumbers(cards.flatMap(({ panel }) => panel ?? []))} (${kind === 'wall' ? 'walls' : kind})`;
  return `${named}: ${size}${inImperial ? '' : ' mm'}, ${mass}, ${people}${ways === '' ? '' : `; ${ways}`}`;
}

function waysText(cards: readonly MovingCard[]): string {
  const names = cards[0]?.ways.map(({ way }) => way) ?? [];
  const worst = names.map((name) => tightest(cards.flatMap((card) => card.ways.filter(({ way }) => way === name))));
  if (worst.length === 0) return '';
  const poses = new Set(cards.flatMap(({ ways }) => ways.map((way) => `${way.pose} ${way.diagonal}`)));
  const least = tightest(worst);
  if (least.passes !== 'does-not-go' && poses.size === 1) {
    const where = worst.length > 1 ? ` at the ${least.way}` : ` at the ${least.way}`;
    return `${poseText(least)}${worst.length > 1 ? ' everywhere' : ''}, ${leftText(least)}${where}`;
  }
  return worst
    .map((way) =>
      way.passes === 'does-not-go' ? `NOT through the ${way.way}` : `${way.way} ${poseText(way)}, ${leftText(way)}`,
    )
    .join('; ');
}

function tightest(ways: readonly PanelWay[]): PanelWay {
  return ways.reduce((least, way) => (way.leftM < least.leftM ? way : least));
}

function leftText({ leftM, passes }: PanelWay): string {
  return `${passes === 'tight' ? 'only just, ' : ''}${roomLeftText(leftM)} left`;
}

/** `600` or `558–600` millimetres, `1′ 11 5/8″`. */
function lengths(metres: readonly number[]): string {
  if (!isImperial()) return span(metres.map((each) => each * 1000));
  const [low, high] = [Math.min(...metres), Math.max(...metres)].map(millimetresText);
  return low === high ? String(low) : `${low}–${high}`;
}

/** `600` or `558–600`. */
function span(values: readonly number[]): string {
  const low = Math.round(Math.min(...values));
  const high = Math.round(Math.max(...values));
  return low === high ? String(high) : `${low}–${high}`;
}

function counted(people: number): string {
  const words = ['', 'one person', 'two people', 'three people', 'four people', 'five people', 'six people'];
  return words[people] ?? `${people} people`;
}
