import type { TextStyle } from '@boothwright/presentation';

/** What the command needs of the process it runs in; tests give their own. */
export interface Terminal {
  readonly cwd: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly stdout: Output;
  readonly stderr: Output;
}

export interface Output {
  write(text: string): unknown;
  readonly isTTY?: boolean | undefined;
  readonly columns?: number | undefined;
}

const narrowest = 60;
const widest = 120;
/** Columns where the output is no terminal, e.g. a file or a log. */
const otherwise = 100;

/** Colours only on a terminal, and not when NO_COLOR asks for none (no-color.org) or the terminal is a dumb one. */
export function styleOf(output: Output, env: Terminal['env'], detail: TextStyle['detail'] = 'short'): TextStyle {
  const columns = output.isTTY && output.columns ? output.columns : otherwise;
  return {
    colour: Boolean(output.isTTY) && !env.NO_COLOR && env.TERM !== 'dumb',
    width: Math.min(widest, Math.max(narrowest, columns)),
    detail,
  };
}
