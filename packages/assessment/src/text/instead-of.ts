/** `STC 35 instead of 34`, or `STC 35 as before` where the whole points are the same. */
export function insteadOf(name: string, after: number, before: number): string {
  return after === before ? `${name} ${after} as before` : `${name} ${after} instead of ${before}`;
}
