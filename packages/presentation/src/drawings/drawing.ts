import type { SourceRange } from '@boothwright/language';
import type { DisplayUnits } from '../numbers/length-text.js';

export interface DrawingOptions {
  readonly units: DisplayUnits;
  /** 20 draws at 1 : 20; without it the largest usual scale at which the drawing fits on `paper`. */
  readonly scale?: number | undefined;
  /** mm that may be printed on; by default what A4 and Letter both leave within their margins. */
  readonly paper?: { readonly widthMm: number; readonly heightMm: number } | undefined;
  /**
   * `page` takes ink and paper of the page that it stands in (`--boothwright-ink`, `--boothwright-paper`,
   * `--boothwright-accent`, else the colour of the text and `Canvas`); `sheet` is black on white, for a file of its own.
   */
  readonly theme?: 'page' | 'sheet' | undefined;
}

/** What the drawing shows, as rows of text: for screen readers and for copying. */
export interface DrawingTable {
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export type DrawingKind = 'section' | 'plan' | 'room' | 'elevation' | 'panels' | 'exploded' | 'sheet' | 'lengths';

interface DrawingOf {
  readonly kind: DrawingKind;
  /** Stays the same while the text changes around it: `section-shell`, `elevation-front`. */
  readonly id: string;
  readonly title: string;
}

/** One SVG element with its size in mm, so that it prints at its scale. */
export interface Drawing extends DrawingOf {
  readonly svg: string;
  readonly description: string;
  /** 20 stands for 1 : 20. */
  readonly scale: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly table: DrawingTable;
  /** Where the marks lead: the element with `data-mark="2"` comes from the third of these places of the text. */
  readonly marks: readonly SourceRange[];
}

/** A drawing that there is nothing for, with the reason in words. */
export interface NotDrawn extends DrawingOf {
  readonly why: string;
}

export function isDrawn(one: Drawing | NotDrawn): one is Drawing {
  return 'svg' in one;
}
