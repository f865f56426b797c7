/** How text for a terminal is written. */
export interface TextStyle {
  /** True when escape sequences for colour may be written. */
  readonly colour: boolean;
  /** Columns to stay within. */
  readonly width: number;
  /** `short` keeps to the answers; `full` adds what they rest on. */
  readonly detail: 'short' | 'full';
}

const codes = { bold: '1', dim: '2', red: '31', green: '32', yellow: '33', blue: '34' } as const;

export type Paint = keyof typeof codes;

/** `text` in a colour, or plain when colours are off. */
export function paint(text: string, how: Paint, style: TextStyle): string {
  return style.colour && text !== '' ? `\u001b[${codes[how]}m${text}\u001b[0m` : text;
}
