import { shownUnit } from '@boothwright/presentation';
import type { Change, Promised } from './promise.js';

/** What a fix promises, for its title: `STC of wall 41 → 52 (+11), room tone 24.1 → 21.0 dBA (−3.1), depth +44 mm`. */
export function promiseWords({ assembly, booth, requirement, lost }: Promised): string {
  const parts: string[] = [];
  if (assembly !== null) parts.push(`STC of ${assembly.name} ${fromTo(assembly.stc, 0)}`);
  else if (booth !== null && booth.stc.before !== booth.stc.after)
    parts.push(`STC of ${booth.name} ${fromTo(booth.stc, 0)}`);
  if (booth?.roomToneDbA) parts.push(`room tone ${fromTo(booth.roomToneDbA, 1, ' dBA')}`);
  // A room tone in dBA and the rating of the assembly have been told already.
  const isTold =
    (requirement?.unit === 'dBA' && requirement.text.includes('room-tone')) ||
    (assembly !== null && requirement?.text.includes(`stc of ${assembly.name} `) === true);
  if (requirement !== null && !isTold) {
    parts.push(`${requirement.text.replace(/^require /, '')}: ${inUnit(requirement.value, requirement.unit)}`);
  }
  if (assembly !== null) parts.push(`depth ${change(assembly.depthMm, 'mm')}`);
  if (booth !== null) parts.push(`mass ${change(booth.massKg, 'kg')}`);
  if (requirement?.met) parts.push(`\`${requirement.text}\` is met`);
  for (const text of lost) parts.push(`\`${text}\` is met no more`);
  return parts.join(', ');
}

function fromTo({ before, after }: Change, digits: number, unit = ''): string {
  return `${before.toFixed(digits)} → ${after.toFixed(digits)}${unit} (${signed(after - before, digits)})`;
}

function inUnit({ before, after }: Change, of: string): string {
  const { factor, unit } = shownUnit(of);
  return fromTo({ before: before * factor, after: after * factor }, 1, ` ${unit}`);
}

/** `+44 mm`, `+1.7 in`: an inch is too coarse for whole ones. */
function change({ before, after }: Change, of: string): string {
  const { factor, unit } = shownUnit(of);
  return `${signed((after - before) * factor, unit === 'in' ? 1 : 0)} ${unit}`;
}

function signed(value: number, digits: number): string {
  const text = Math.abs(value).toFixed(digits);
  const isNothing = Number(text) === 0;
  return isNothing ? `±${text}` : `${value < 0 ? '−' : '+'}${text}`;
}
