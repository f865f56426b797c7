import type { ComparisonDocument, Effect } from '@boothwright/assessment';
import { effectDifference } from './comparison-parts.js';

/** Figures told beside verdicts; the rest is in the sheet. */
const mostFigures = 3;

/**
 * `since the last commit: 1 lost, mass +62 kg, noise inside -3 dBA`: what a booth gained and lost, the largest first.
 * Undefined where nothing that is told in short moved.
 */
export function sinceWords({ requirements, effects }: ComparisonDocument, booth: string): string | undefined {
  const own = requirements.filter((one) => one.booth === null || one.booth === booth);
  const count = (turn: 'lost' | 'gained') => own.filter((one) => one.turn === turn).length;
  const verdicts = (['lost', 'gained'] as const).flatMap((turn) => (count(turn) === 0 ? [] : `${count(turn)} ${turn}`));
  const figures = effects
    .filter((one) => one.of === booth && (one.steps ?? 0) >= 1)
    .slice(0, mostFigures)
    .map(figureWords);
  const told = [...verdicts, ...figures];
  return told.length === 0 ? undefined : `since the last commit: ${told.join(', ')}`;
}

function figureWords(effect: Effect): string {
  return `${effect.what} ${effectDifference(effect)}`;
}
