import { area, line } from 'd3-shape';
import type { Axis } from './frame.js';

interface Point {
  readonly hz: number;
  readonly value: number | null;
}

function points(xs: readonly number[], values: readonly (number | null)[]): Point[] {
  return xs.map((hz, index) => ({ hz, value: values[index] ?? null }));
}

/** A line that breaks where nothing is known. */
export function linePath(xs: readonly number[], values: readonly (number | null)[], x: Axis, y: Axis): string {
  return (
    line<Point>()
      .defined((point) => point.value !== null && Number.isFinite(point.value))
      .x((point) => x.at(point.hz))
      .y((point) => y.at(point.value ?? 0))
      .digits(1)(points(xs, values)) ?? ''
  );
}

/** The area between two lines over the same bands. */
export function bandPath(
  xs: readonly number[],
  low: readonly number[],
  high: readonly number[],
  x: Axis,
  y: Axis,
): string {
  return (
    area<number>()
      .x((index) => x.at(xs[index] ?? 0))
      .y0((index) => y.at(low[index] ?? 0))
      .y1((index) => y.at(high[index] ?? 0))
      .digits(1)(xs.map((_, index) => index)) ?? ''
  );
}
