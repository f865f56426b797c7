/** Intervals over which a sum runs; each may be stretched around the place of a peak. */
export class Pieces {
  count = 0;
  /** Ends, counted along the interval: in x where it is plain, in u where x = centre + width sinh(u). */
  readonly from: number[] = [];
  readonly to: number[] = [];
  readonly centre: number[] = [];
  /** 0 for a plain interval. */
  readonly width: number[] = [];

  clear(): void {
    this.count = 0;
  }

  addPlain(from: number, to: number): void {
    if (to > from) this.put(this.count++, from, to, 0, 0);
  }

  /**
   * An interval of x near a peak 1/((x - centre)^2 + width^2). In u the peak is 1/cosh(u), as wide as any other, so that few
   * points take it in however narrow it is.
   */
  addAround(centre: number, width: number, from: number, to: number): void {
    const [start, end] = [Math.asinh((from - centre) / width), Math.asinh((to - centre) / width)];
    if (end > start) this.put(this.count++, start, end, centre, width);
  }

  put(index: number, from: number, to: number, centre: number, width: number): void {
    this.from[index] = from;
    this.to[index] = to;
    this.centre[index] = centre;
    this.width[index] = width;
  }
}
