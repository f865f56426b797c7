import type { JudgedContext } from '../assessment-context.js';
import { bandIndexOf } from '../bands/grid.js';
import type { AssessedBooth } from '../booth/assess-booth.js';
import type { RoomSoundResult } from '../result/room-sound-result.js';
import { modalBoxOf } from '../room-sound/acoustic-box.js';
import { bestDeeperLining } from '../room-sound/deeper-linings.js';
import { modalTime } from '../room-sound/modal-decay.js';
import { proposedDecay, worthwhileShare } from '../room-sound/practice.js';
import { decayAfter } from '../room-sound/room-sound.js';
import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
import { textRange } from '../text/text-range.js';
import type { Found } from './found.js';

/** A low band that rings longer than the middle by more than is proposed. */
interface Boxy {
  readonly hz: 125 | 250;
  readonly limit: number;
  readonly ratio: number;
  readonly low: number;
  readonly high: number;
  readonly seconds: number;
}

/** The lows ring longer than the middle: a boxy sound, however dry it is above. */
export function boxyDecay(context: JudgedContext): Found[] {
  return context.booths.flatMap((assessed) => {
    const sound = assessed.result.roomSound;
    const boxy = sound === null ? [] : boxyBands(sound);
    const worst = boxy.toSorted((a, b) => b.ratio / b.limit - a.ratio / a.limit)[0];
    return sound === null || worst === undefined ? [] : [finding(context, assessed, sound, boxy, worst)];
  });
}

/**
 * Bands beyond their limit. Where the range leaves it open whether the band rings longer than the middle at all, nothing is
 * said of it.
 */
function boxyBands({ decay, mid }: RoomSoundResult): Boxy[] {
  if (mid === null) return [];
  return ([125, 250] as const).flatMap((hz) => {
    const band = decay[bandIndexOf(hz)];
    if (band === undefined || band.seconds === null || band.lowS === null || band.highS === null) return [];
    const limit = hz === 125 ? proposedDecay.ratio125 : proposedDecay.ratio250;
    const [ratio, low, high] = [band.seconds / mid.seconds, band.lowS / mid.highS, band.highS / mid.lowS];
    return ratio > limit && low > 1 ? [{ hz, limit, ratio, low, high, seconds: band.seconds }] : [];
  });
}

function finding(
  context: JudgedContext,
  { booth, result }: AssessedBooth,
  sound: RoomSoundResult,
  boxy: readonly Boxy[],
  worst: Boxy,
): Found {
  const mid = sound.mid!.seconds;
  const sure = boxy.some(({ low, limit }) => low > limit);
  const figures: Record<string, number> = { midS: mid };
  for (const { hz, ratio, low, high, seconds, limit } of boxy) {
    figures[`decay${hz}S`] = seconds;
    figures[`ratio${hz}`] = ratio;
    figures[`ratio${hz}Low`] = low;
    figures[`ratio${hz}High`] = high;
    figures[`limit${hz}`] = limit;
  }
  const bands = boxy.map(
    ({ hz, ratio, low, high, limit }) =>
      `${decimals(ratio, 1)} times at ${hz} Hz (${decimals(low, 1)} to ${decimals(high, 1)}, proposed at most ${limit})`,
  );
  const dry = mid < proposedDecay.midFrom;
  return {
    id: 'boxy-decay',
    severity: sure ? 'warning' : 'information',
    range: textRange(booth.nameRange),
    message: `${booth.name} sounds boxy: the lows ring longer than the middle bands, ${joined(bands)}`,
    explanation: `From 500 Hz to 2 kHz sound falls by 60 dB in ${decimals(mid, 2)} s, at ${worst.hz} Hz in ${decimals(worst.seconds, 2)} s. ${booth.linings.length > 0 ? 'Thin fibre takes the middle and the highs and leaves the first modes of the booth to ring.' : 'Bare walls and people take less of the lows than of the highs.'}${sure ? '' : ' The range also allows less than the limit.'}${dry ? ` The middle is drier than the ${decimals(proposedDecay.midFrom, 2)} to ${decimals(proposedDecay.midTo, 2)} s proposed for a booth: slats or boards over part of the fibre would bring the ratio down too, and a livelier sound.` : ''}`,
    source:
      'Damped modes of the lined box over the field above them; the limits are the project’s own proposal, not published. docs/findings/boxy-decay.md',
    fix: fixWords(context, { booth, result }, sound, worst, figures),
    figures,
    related: booth.linings.map(({ range }) => ({ range: textRange(range), message: 'the lining' })),
  };
}

/** The one deeper lining that shortens the worst band most, with what it brings. */
function fixWords(
  { spec, air, memo }: JudgedContext,
  { booth, result }: Pick<AssessedBooth, 'booth' | 'result'>,
  sound: RoomSoundResult,
  { hz, limit, ratio, seconds }: Boxy,
  figures: Record<string, number>,
): string {
  const people = spec.session?.people.value ?? 0;
  const band = bandIndexOf(hz);
  const best = bestDeeperLining(booth, (changed) =>
    modalTime(modalBoxOf(changed, people, air, memo, [band]), band, air),
  );
  const after = best === null ? null : decayAfter(best.booth, people, band, result.schroederHz, air, memo);
  const then = after?.band.seconds ?? null;
  const thenMid = after?.mid?.seconds ?? null;
  const otherwise = `Fibre needs depth: a quarter of a wave is ${decimals(air.soundSpeed / (4 * hz), 2)} m at ${hz} Hz. An absorber of a sheet on fibre that is tuned to ${hz} Hz does it in less; what it brings is not computed.`;
  if (best === null || then === null || thenMid === null || then > (1 - worthwhileShare) * seconds) {
    return `No deeper lining of one face brings 10 % at ${hz} Hz. ${otherwise}`;
  }
  figures.afterS = then;
  figures.afterRatio = then / thenMid;
  const lost = [0, 1, 2].map((axis) => sound.airM[axis]! - after!.airM[axis]!);
  const [side, metres] = (['width', 'depth', 'height'] as const)
    .map((name, axis) => [name, lost[axis]!] as const)
    .reduce((most, each) => (each[1] > most[1] ? each : most));
  const enough = then / thenMid <= limit ? '' : ', not enough alone';
  const cost = metres >= 0.005 ? ` It takes ${decimals(1000 * metres, 0)} mm of the ${side}.` : '';
  return `Of one change this helps most: ${best.words}. At ${hz} Hz then ${decimals(then, 2)} s instead of ${decimals(seconds, 2)} s, ${decimals(then / thenMid, 1)} times the middle instead of ${decimals(ratio, 1)}${enough}.${cost} ${otherwise}`;
}
