import type { Booth, Face } from '@boothwright/language';
import type { PathResult } from '../result/result-document.js';
import { pathWords } from './path-words.js';

export interface StrongestPath {
  /** Id of the path; `faces:` and the name of the build-up for several faces of one. */
  readonly id: string;
  readonly words: string;
  /** Sum of its weights. */
  readonly weight: number;
  /** Places of its members among the paths. */
  readonly members: readonly number[];
}

/**
 * The path with the largest weight. Faces of the same build-up count together: four walls of one kind are one thing to
 * improve.
 */
export function strongestPath(
  booth: Booth,
  paths: readonly PathResult[],
  weights: readonly number[],
): StrongestPath | null {
  const groups = new Map<string, { weight: number; members: { path: PathResult; index: number; weight: number }[] }>();
  paths.forEach((path, index) => {
    const weight = weights[index] ?? 0;
    const build = path.kind === 'face' ? booth.faces[path.name as Face]?.assembly.name : undefined;
    const key = build === undefined ? path.id : `faces of ${build}`;
    const group = groups.get(key) ?? { weight: 0, members: [] };
    group.weight += weight;
    group.members.push({ path, index, weight });
    groups.set(key, group);
  });
  let best: StrongestPath | null = null;
  for (const [key, { weight, members }] of groups) {
    if (weight <= (best?.weight ?? 0)) continue;
    const { path } = members.reduce((strongest, member) => (member.weight > strongest.weight ? member : strongest));
    best = {
      id: members.length > 1 ? key.replace('faces of ', 'faces:') : path.id,
      words: members.length > 1 ? `the ${members.length} ${key}` : pathWords(path),
      weight,
      members: members.map(({ index }) => index),
    };
  }
  return best;
}
