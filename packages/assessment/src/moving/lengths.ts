import { decimals } from '../text/decimals.js';

/** `2.18 m` */
export function metres(value: number): string {
  return `${decimals(value, 2)} m`;
}

/** Whole millimetres left, never more than there are. */
export function millimetresLeft(value: number): string {
  return `${decimals(Math.floor(value * 1000 + 1e-6), 0)} mm`;
}

/** Whole millimetres missing, never fewer than there are. */
export function millimetresMissing(value: number): string {
  return `${decimals(Math.ceil(-value * 1000 - 1e-6), 0)} mm`;
}

/** `600 x 2136 x 95 mm` */
export function panelSize(panel: { widthM: number; heightM: number; thicknessM: number }): string {
  return `${[panel.widthM, panel.heightM, panel.thicknessM].map((side) => decimals(side * 1000, 0)).join(' x ')} mm`;
}
