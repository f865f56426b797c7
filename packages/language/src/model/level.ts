/** A level is a type of its own: it is never added with `+`. `weighting` names what the reading was. */
export interface Level {
  readonly decibels: number;
  readonly weighting: 'A' | 'C' | 'Z' | 'FS' | 'NC' | 'none';
}
