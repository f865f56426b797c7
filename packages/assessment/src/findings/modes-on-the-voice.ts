import type { JudgedContext } from '../assessment-context.js';
import { bandIndexOf } from '../bands/grid.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import type { RoomMode, RoomSoundResult } from '../result/room-sound-result.js';
import { modalBoxOf } from '../room-sound/acoustic-box.js';
import { bestDeeperLining } from '../room-sound/deeper-linings.js';
import { cornerToCorner, modesBetween } from '../room-sound/modal-decay.js';
import { clusterRatio, fundamentals } from '../room-sound/mode-list.js';
import { proposedDecay, proposedRatioAt, worthwhileShare } from '../room-sound/practice.js';
import { decimals } from '../text/decimals.js';
import { hertz } from '../text/hertz.js';
import { joined } from '../text/joined.js';
import { textRange } from '../text/text-range.js';
import type { Found } from './found.js';

/** Modes named one by one, those between two faces first; the rest are counted. */
const mostNamed = 3;
/** Changes of a side that are tried to set modes of a cluster apart, m, the smallest first. */
const sideSteps = [0.05, -0.05, 0.1, -0.1, 0.15, -0.15];

/** A mode that rings, with times that are known. */
type Ringing = RoomMode & { readonly decayS: number; readonly lowS: number; readonly highS: number };

/** Modes of the lined booth that ring far longer than the middle bands and lie where voices have their fundamental. */
export function modesOnTheVoice(context: JudgedContext): Found[] {
  return context.booths.flatMap((assessed) => {
    const sound = assessed.result.roomSound;
    const weak = sound === null ? [] : weakModes(sound);
    return sound === null || weak.length === 0 ? [] : [finding(context, assessed, sound, weak)];
  });
}

/**
 * Modes on a voice whose decay passes the proposed ratio to the middle bands, slowest first. A middle drier than the
 * proposal counts as its lower end: what dies as fast as that is no ringing. Where the range leaves it open whether a mode
 * rings longer than the middle at all, it is left out.
 */
function weakModes({ mid, modes }: RoomSoundResult): Ringing[] {
  if (mid === null) return [];
  return modes
    .filter(isRinging)
    .filter(
      (mode) =>
        onVoice(mode) &&
        mode.decayS > proposedRatioAt(mode.hz) * reference(mid.seconds) &&
        mode.lowS > reference(mid.highS),
    )
    .sort((a, b) => b.decayS - a.decayS);
}

const reference = (seconds: number) => Math.max(seconds, proposedDecay.midFrom);

function isRinging(mode: RoomMode): mode is Ringing {
  return mode.decayS !== null && mode.lowS !== null;
}

/** Its half-power band meets the fundamentals of voices; the band is 3 ln 10 / (pi T) wide. */
function onVoice({ hz, decayS }: Ringing): boolean {
  const half = (3 * Math.LN10) / (2 * Math.PI * decayS);
  return hz + half >= fundamentals['low-voice'].fromHz && hz - half <= fundamentals['high-voice'].toHz;
}

function finding(
  context: JudgedContext,
  { booth, result }: AssessedBooth,
  sound: RoomSoundResult,
  weak: readonly Ringing[],
): Found {
  const mid = sound.mid!;
  const slowest = weak[0]!;
  const sure = weak.some(({ hz, lowS }) => lowS > proposedRatioAt(hz) * reference(mid.highS));
  const named = weak
    .toSorted((a, b) => total(a) - total(b))
    .slice(0, mostNamed)
    .map((mode) => `${hertz(mode.hz)} ${between(mode)} (${seconds(mode.decayS)})`);
  const more = weak.length - named.length;
  const all = more > 0 ? `${named.join(', ')} and ${more} more` : joined(named);
  const figures: Record<string, number> = {
    count: weak.length,
    slowestHz: slowest.hz,
    slowestS: slowest.decayS,
    slowestLowS: slowest.lowS,
    slowestHighS: slowest.highS,
    midS: mid.seconds,
  };
  const clusters = clustersIn(weak);
  return {
    id: 'modes-on-the-voice',
    severity: sure ? 'warning' : 'information',
    range: textRange(booth.nameRange),
    message: `${booth.name}: ${weak.length > 1 ? 'modes ring' : 'a mode rings'} on where voices have their pitch: ${all}`,
    explanation: `A note that meets such a mode is louder and longer than its neighbours; from 500 Hz to 2 kHz sound is gone after ${seconds(mid.seconds)}. For ${hertz(slowest.hz)} the range is ${seconds(slowest.lowS)} to ${seconds(slowest.highS)}.${heldWords(sound, result.modesHz, weak)}`,
    source: `Damped modes of the lined box; fundamentals of voices from ${fundamentals['low-voice'].fromHz} to ${fundamentals['high-voice'].toHz} Hz; more than ${proposedDecay.ratio125} times the middle (${proposedDecay.ratio250} times from 177 Hz on) is the project’s own limit. docs/findings/modes-on-the-voice.md`,
    fix: [deeperWords(context, booth, slowest, figures), ...clusters.map((cluster) => apartWords(sound, cluster))].join(
      ' ',
    ),
    figures,
    related: booth.linings.map(({ range }) => ({ range: textRange(range), message: 'the lining' })),
  };
}

/** 1 for the first mode between two faces. */
const total = ({ order }: Pick<RoomMode, 'order'>) => order[0] + order[1] + order[2];

const seconds = (time: number) => `${decimals(time, 2)} s`;

/** Faces between which a mode stands: `between front and back`, `across left-right and floor-roof`. */
function between({ order }: Pick<RoomMode, 'order'>): string {
  const pairs = [
    ['left', 'right'],
    ['front', 'back'],
    ['floor', 'roof'],
  ].filter((_, axis) => order[axis] !== 0);
  if (pairs.length === 1) return `between ${pairs[0]!.join(' and ')}`;
  return pairs.length === 3 ? 'in all three directions' : `across ${pairs.map((pair) => pair.join('-')).join(' and ')}`;
}

/** The first modes of each pair of faces that lie on a voice and are held by the lining. */
function heldWords(
  { modes }: RoomSoundResult,
  bare: AssessedBooth['result']['modesHz'],
  weak: readonly Ringing[],
): string {
  const held = modes.filter(
    (mode) => isRinging(mode) && onVoice(mode) && total(mode) === 1 && !weak.includes(mode),
  ) as Ringing[];
  if (held.length === 0) return '';
  const words = held.map((mode) => {
    const hard = bare.find(({ order }) => order.join() === mode.order.join());
    const bareWords = hard === undefined ? '' : `, ${hertz(hard.hz)} without lining`;
    return `${hertz(mode.hz)} ${between(mode)} (${seconds(mode.decayS)}${bareWords})`;
  });
  return ` The lining holds ${joined(words)}, on a voice too: thinner fibre there lets ${held.length > 1 ? 'them' : 'it'} ring.`;
}

/** Runs of two or more weak modes so near to each other that they act as one, lowest first. */
function clustersIn(weak: readonly Ringing[]): Ringing[][] {
  const runs: Ringing[][] = [];
  for (const mode of weak.toSorted((a, b) => a.hz - b.hz)) {
    const run = runs.at(-1);
    if (run !== undefined && mode.hz <= clusterRatio * run[0]!.hz) run.push(mode);
    else runs.push([mode]);
  }
  return runs.filter((run) => run.length > 1);
}

/** The one deeper lining that shortens the slowest mode most. */
function deeperWords(
  { spec, air, memo }: JudgedContext,
  booth: AssessedBooth['booth'],
  { hz, order, decayS }: Ringing,
  figures: Record<string, number>,
): string {
  const people = spec.session?.people.value ?? 0;
  const best = bestDeeperLining(booth, (changed) => {
    const band = bandIndexOf(hz);
    const box = modalBoxOf(changed, people, air, memo, [band]);
    const mode = modesBetween(box, band, air, ...cornerToCorner(box)).find(
      (each) => each.order.join() === order.join(),
    );
    return mode === undefined || !(mode.damping > 0) ? null : (3 * Math.LN10) / mode.damping;
  });
  const tuned = `An absorber of a sheet on fibre, tuned to ${hertz(hz)} and put where the mode is loudest, at one of the faces it stands between, does it in less depth; what it brings is not computed.`;
  if (best === null || best.value > (1 - worthwhileShare) * decayS) {
    return `No deeper lining of one face brings 10 % at ${hertz(hz)}. ${tuned}`;
  }
  figures.afterS = best.value;
  return `Depth helps most here: ${best.words}; ${hertz(hz)} then rings for ${seconds(best.value)} instead of ${seconds(decayS)}; fibre along which a mode runs damps it too. ${tuned}`;
}

/** The smallest change of one side that sets the modes of a cluster apart, by the shift that bare walls would see. */
function apartWords({ airM }: RoomSoundResult, cluster: readonly Ringing[]): string {
  const names = ['wide', 'deep', 'high'] as const;
  const what = `${joined(cluster.map(({ hz }) => hertz(hz)))} lie within 5 % and act as one`;
  for (const step of sideSteps) {
    for (const [axis, name] of names.entries()) {
      const moved = cluster.map((mode) => mode.hz * shiftOf(airM, axis, step, mode.order)).sort((a, b) => a - b);
      if (!moved.slice(1).every((hz, index) => hz > clusterRatio * moved[index]!)) continue;
      const way = step > 0 ? 'more' : 'less';
      return `${what}: ${decimals(1000 * Math.abs(step), 0)} mm ${way} ${name}, they would stand apart at ${joined(moved.map(hertz))}.`;
    }
  }
  return `${what}: no side changed by up to 150 mm sets them apart.`;
}

function shiftOf(size: RoomSoundResult['airM'], axis: number, step: number, order: RoomMode['order']): number {
  const root = (sides: readonly number[]) => Math.hypot(...sides.map((side, index) => order[index]! / side));
  return root(size.with(axis, size[axis]! + step)) / root(size);
}
