/** `assumed 0.5 s`: shown where a fact is left out. */
export function defaultLabel(text: string): string {
  return `assumed ${text}`;
}
