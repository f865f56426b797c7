import { assess, type ResultDocument } from '@boothwright/assessment';
import type { BoothSpec } from '@boothwright/language';
import { partsCsv, renderPartsText } from '@boothwright/presentation';
import { type ExitCode, exitCode } from './exit-code.js';
import { guarded } from './guarded.js';
import { grave } from './problems-text.js';
import { styleOf, type Terminal } from './terminal.js';
import { toJson } from './to-json.js';
import { withCheckedSpec } from './with-checked-spec.js';

export type PartsFormat = 'text' | 'csv' | 'json';

export interface PartsCommandOptions {
  readonly format: PartsFormat;
  readonly variant?: string | undefined;
}

/** `parts`: cut list, layouts, what to buy and what to seal of one specification to standard output. */
export function partsCommand(spec: string, options: PartsCommandOptions, terminal: Terminal): ExitCode {
  return guarded(spec, terminal, () => listParts(spec, options, terminal));
}

function listParts(spec: string, options: PartsCommandOptions, terminal: Terminal): ExitCode {
  // Other variants bring nothing to this list.
  const alone = (chosen: BoothSpec) => assess({ ...chosen, variants: [] });
  return withCheckedSpec(spec, { variant: options.variant }, terminal, alone, ({ result, problems }) => {
    terminal.stdout.write(printed(result, options.format, terminal));
    const nothing = Object.keys(result.booths).length === 0;
    return nothing || problems.some(grave) ? exitCode.missed : exitCode.met;
  });
}

function printed(result: ResultDocument, format: PartsFormat, terminal: Terminal): string {
  if (format === 'csv') return partsCsv(result);
  if (format === 'text') return renderPartsText(result, styleOf(terminal.stdout, terminal.env));
  const booths = Object.entries(result.booths).map(([name, { build }]) => [name, build]);
  return `${toJson({ file: result.file, booths: Object.fromEntries(booths) })}\n`;
}
