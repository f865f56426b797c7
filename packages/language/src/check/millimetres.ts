/** A length in metres as a message shows it. */
export function millimetres(value: number): string {
  return `${Math.round(value * 10_000) / 10} mm`;
}
