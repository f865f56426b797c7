import type { Memo } from '../memo/memo.js';
import type { PanelWay } from '../result/moving-result.js';
import { bestPose, type PoseFit } from './best-pose.js';
import { metres, millimetresLeft, millimetresMissing } from './lengths.js';
import { passes } from './passes.js';
import { poseWords } from './pose-words.js';
import type { PanelSize } from './poses.js';
import { comfort } from './practice.js';
import type { Way } from './ways.js';

/** One panel through one way: how to hold it, what is left, and why where it does not go. */
export function panelWay(size: PanelSize, way: Way, memo: Memo): PanelWay {
  const key = `moving ${way.name} ${way.key} ${size.width} ${size.height} ${size.thickness}`;
  return memo.of(key, () => compute(size, way));
}

function compute(size: PanelSize, way: Way): PanelWay {
  const fit = bestPose(size, way.judge, comfort);
  const verdict = passes(fit.play);
  const longest = verdict === 'does-not-go' ? longestThatGoes(size, way) : null;
  return {
    way: way.name,
    passes: verdict,
    pose: fit.pose.kind,
    angleDeg: fit.pose.angle,
    diagonal: fit.diagonal,
    leftM: fit.play,
    lengthM: Math.max(fit.pose.long, fit.pose.broad),
    longestM: longest,
    text: verdict === 'does-not-go' ? notWords(size, way, fit, longest) : goesWords(way, fit, verdict === 'tight'),
  };
}

function goesWords(way: Way, { pose, play, diagonal }: PoseFit, tight: boolean): string {
  const left = `${millimetresLeft(play)} left`;
  return `${way.name}: ${poseWords(pose.kind, pose.angle, diagonal)}, ${tight ? `only just, ${left}` : left}`;
}

function notWords(size: PanelSize, way: Way, { pose, play, diagonal }: PoseFit, longest: number | null): string {
  const long = Math.max(size.width, size.height);
  const upright =
    way.headroom !== undefined && long > way.headroom
      ? `, ${metres(long)} against ${metres(way.headroom)} of height upright`
      : '';
  const most = longest === null ? '' : `; up to ${metres(Math.floor(longest * 100) / 100)} long it would go`;
  return (
    `${way.name}: does not go upright, on its edge, flat, tilted in its plane or leaning; nearest ` +
    `${poseWords(pose.kind, pose.angle, diagonal)}, ${millimetresMissing(play)} missing${upright}${most}`
  );
}

const halvings = 10;

/** m; how long a panel of the same width and thickness could be to go, by halving; null where none would. */
function longestThatGoes(size: PanelSize, way: Way): number | null {
  const long = Math.max(size.width, size.height);
  const short = Math.min(size.width, size.height);
  const goes = (length: number) =>
    bestPose({ width: short, height: length, thickness: size.thickness }, way.judge, comfort).play >= comfort;
  if (!goes(short)) return null;
  let yes = short;
  let no = long;
  for (let index = 0; index < halvings; index += 1) {
    const middle = (yes + no) / 2;
    if (goes(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}
