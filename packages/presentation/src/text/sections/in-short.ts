import type { RequirementResult, ResultDocument } from '@boothwright/assessment';
import { formatNumber } from '../../numbers/format-number.js';
import { formatDifference } from '../../numbers/format-quantity.js';
import { requirementName } from '../../numbers/requirement-words.js';
import { printable } from '../printable.js';
import { joinLines, section } from '../section.js';
import type { TextStyle } from '../text-style.js';
import { wrapText } from '../wrap-text.js';
import { deadlyCautions, deadlyHeading } from './cautions.js';
import { pairsText, variantEffects } from './variant-effects.js';

/**
 * What somebody who reads no further has to know: what can kill, what stands in the way, what fails whatever the range, what may go
 * either way, which of the variants of the text helps most, how long the air lasts.
 */
export function inShortSection(result: ResultDocument, style: TextStyle): string | undefined {
  const lines = inShortLines(result);
  return section(
    'In short',
    joinLines(...lines.map((text) => wrapText(printable(text), style.width, '  - ', '    '))),
    style,
  );
}

/** The same without a layout, a sentence each. */
export function inShortLines(result: ResultDocument): readonly string[] {
  const { requirements } = result;
  if (requirements.length === 0) return [];
  const missed = requirements.filter(({ verdict }) => verdict === 'missed').toSorted(floorFirst);
  const surely = missed.filter(({ withinRange }) => !withinRange);
  const perhaps = missed.filter(({ withinRange }) => withinRange);
  const barely = requirements.filter(({ verdict, withinRange }) => verdict === 'met' && withinRange);
  const floor = missed.some(({ kind }) => kind === 'floor-load');
  return [
    deadlyLine(result),
    surely.length > 0 && `Missed over the whole range: ${list(surely)}.`,
    perhaps.length > 0 &&
      `Missed by the prediction, though the favourable end of its range would do: ${list(perhaps)}.`,
    barely.length > 0 && `Met, but not at the unfavourable end of the range: ${list(barely)}.`,
    floor && 'Show the floor to a structural engineer before anything is bought.',
    bestVariant(result),
    ...Object.values(result.booths).map((booth) => airLasts(booth)),
  ].filter((line): line is string => Boolean(line));
}

/** One line that nobody who reads no further may miss. */
function deadlyLine(result: ResultDocument): string | undefined {
  const hazards = [...new Set(deadlyCautions(result).map(({ hazard }) => hazard))];
  if (hazards.length === 0) return undefined;
  const words = hazards.map((hazard) => hazard.charAt(0).toLowerCase() + hazard.slice(1)).join('; ');
  return `${deadlyHeading}, see there: ${words}.`;
}

/** What can end the plan comes before what can be mended. */
function floorFirst(a: RequirementResult, b: RequirementResult): number {
  return Number(b.kind === 'floor-load') - Number(a.kind === 'floor-load');
}

function list(requirements: readonly RequirementResult[]): string {
  return requirements
    .map((requirement) => {
      const { margin, unit, verdict } = requirement;
      const name = requirementName(requirement);
      if (margin === null) return name;
      const amount = formatDifference(Math.abs(margin), unit);
      return verdict === 'missed'
        ? `${name} by ${requirement.atLeast ? 'at least ' : ''}${amount}`
        : `${name} with ${amount} to spare`;
    })
    .join('; ');
}

/** The variant that meets most, if it meets more than the base or comes nearer: what it changes, what that does. */
function bestVariant(result: ResultDocument): string | undefined {
  const met = result.requirements.filter(({ verdict }) => verdict === 'met').length;
  const total = result.requirements.length;
  const ranked = Object.entries(result.variants)
    .map(([name, variant]) => ({ name, variant, effects: variantEffects(result, variant) }))
    .filter(({ effects }) => effects.met > met || (effects.met === met && effects.nearer.length > 0))
    .toSorted((a, b) => b.effects.met - a.effects.met || b.effects.nearer.length - a.effects.nearer.length);
  const [best] = ranked;
  if (best === undefined || met === total) return undefined;
  const { name, variant, effects } = best;
  const parts = [
    effects.gained.length > 0 && `it meets ${pairsText(effects.gained)}`,
    effects.nearer.length > 0 && `comes nearer to ${pairsText(effects.nearer)}`,
    effects.farther.length > 0 && `moves away from ${pairsText(effects.farther)}`,
    effects.lost.length > 0 && `then misses ${pairsText(effects.lost)}`,
    effects.costs.join(', '),
  ].filter(Boolean);
  const title = variant.title ? ` "${variant.title}"` : '';
  const helps =
    effects.met === total
      ? `Of the variants of the text ${name}${title} meets everything asked`
      : `No variant of the text meets everything asked; ${name}${title} comes nearest and meets ${effects.met} of ${total}`;
  return `${helps}: ${parts.join('; ')}.${writtenText(variant)}`;
}

/** More changes than this are counted only: the text has them all in one place. */
const mostWritten = 12;

/** What somebody has to write to get there. */
function writtenText({ written }: ResultDocument['variants'][string]): string {
  if (written.length === 0) return '';
  const shown = written.slice(0, mostWritten).map(({ text }) => `\`${text}\``);
  const more = written.length - shown.length;
  return ` It changes ${shown.join(', ')}${more > 0 ? ` and ${more} more` : ''}.`;
}

type Booth = ResultDocument['booths'][string];

/** How long the planned air lasts, where a level that tires is passed within the session. */
function airLasts({ air }: Booth): string | undefined {
  if (air === null) return undefined;
  const { fanOn, fanOff, judged, sessionMinutes } = air;
  const curve = judged === 'off' ? fanOff : (fanOn ?? fanOff);
  const minutes = curve.minutesTo['1000'];
  if (minutes === null || minutes > sessionMinutes) return undefined;
  return `With the fan ${curve.setting} the air passes 1000 ppm of CO₂ after ${formatNumber(minutes, minutes < 10 ? 1 : 0)} min of a session of ${formatNumber(sessionMinutes)} min.`;
}
