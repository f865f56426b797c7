/** Between what a figure usually lies, in the unit of the checked spec; ends included. */
export interface Usual {
  readonly min: number;
  readonly max: number;
  readonly text: string;
}

/** Lengths in metres and times in seconds, and the smaller or larger units that are written for each other by mistake. */
const UNITS: Readonly<Record<string, number>> = { mm: 0.001, cm: 0.01, m: 1, s: 1, min: 60, h: 3600 };
const MEANT: Readonly<Record<string, readonly string[]>> = {
  m: ['mm'],
  cm: ['mm', 'm'],
  mm: ['cm', 'm'],
  s: ['min', 'h'],
  min: ['s'],
  h: ['min'],
};

/** The figure with the unit that brings it between the bounds; undefined when none does. */
export function inOtherUnit(text: string, { min, max }: { readonly min: number; readonly max: number }) {
  const match = /^([\d.]+) ?(mm|cm|m|s|min|h)$/.exec(text);
  if (!match) return undefined;
  const unit = MEANT[match[2]!]!.find((other) => {
    const value = Number(match[1]) * UNITS[other]!;
    return value >= min && value <= max && value > 0;
  });
  return unit && `${match[1]} ${unit}`;
}
