/** A length in mm as the workshop writes it: tenths only where there are some. */
export function mm(metres: number): string {
  return String(Number((metres * 1000).toFixed(1)));
}
