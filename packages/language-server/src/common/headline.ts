import type { RequirementResult } from '@boothwright/assessment';
import { boothLabel } from '@boothwright/presentation';
import type { Position } from 'vscode-languageserver';
import { boothsAt } from './hover/booths-at.js';
import { statementsAt } from './statements-at.js';
import type { View } from './view.js';

/** What an editor's status bar says about the booth at the cursor. */
export interface Headline {
  readonly booth: string;
  /** `3 of 5 met · 21 dBA inside · 430 kg · 2.6 kPa`. */
  readonly text: string;
  /** One line for each requirement that is not met. */
  readonly missed: readonly string[];
  /** `stale` while the text is broken, `pending` while numbers are being worked out; both show earlier numbers. */
  readonly state: 'fresh' | 'pending' | 'stale';
}

/** The booth in whose block the cursor stands, or the first one; undefined before there are any numbers. */
export function headline(view: View, position: Position): Headline | undefined {
  const [named] = boothsAt(view, statementsAt(view.parsed, view.lines.offsetAt(position)));
  if (named === undefined) return undefined;
  const [booth, result] = named;
  const asked = (view.results?.requirements ?? []).filter((each) => each.booth === null || each.booth === booth);
  const missed = asked.filter(({ verdict }) => verdict !== 'met');
  const met = asked.length === 0 ? [] : [`${asked.length - missed.length} of ${asked.length} met`];
  return {
    booth,
    text: [...met, boothLabel(result)].join(' · '),
    missed: missed.map(line),
    state: view.stale ? 'stale' : view.basePending ? 'pending' : 'fresh',
  };
}

function line({ text, verdict }: RequirementResult): string {
  return `${verdict === 'missed' ? 'missed' : 'not assessed'}: ${text.replace(/^require +/, '')}`;
}
