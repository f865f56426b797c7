import { assess } from '@boothwright/assessment';
import type { BoothSpec } from '@boothwright/language';
import { renderFigures } from '@boothwright/presentation';
import { type ExitCode, exitCode } from './exit-code.js';
import { guarded } from './guarded.js';
import type { Terminal } from './terminal.js';
import { withCheckedSpec } from './with-checked-spec.js';

export interface FiguresCommandOptions {
  readonly variant?: string | undefined;
}

/**
 * `figures`: the text and, below it, its figures by line, for tools that compare lines. A verdict is no reason for them to
 * stop, so every text that can be read ends with 0.
 */
export function figuresCommand(spec: string, { variant }: FiguresCommandOptions, terminal: Terminal): ExitCode {
  return guarded(spec, terminal, () => {
    const alone = (chosen: BoothSpec) => assess({ ...chosen, variants: [] });
    return withCheckedSpec(spec, { variant }, terminal, alone, ({ result, texts, shownAs }) => {
      const text = (texts.get(shownAs(result.file)) ?? '').replace(/\r\n?/g, '\n');
      const ended = text === '' || text.endsWith('\n') ? text : `${text}\n`;
      terminal.stdout.write(`${ended}\n--- figures ---\n${renderFigures(result)}`);
      return exitCode.met;
    });
  });
}
