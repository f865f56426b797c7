/** `panel 3`, `panels 1–4, 7`: ascending, with runs of three and more drawn together. */
export function panelNumbers(numbers: readonly number[]): string {
  const runs: number[][] = [];
  for (const number of [...numbers].sort((one, two) => one - two)) {
    const run = runs[runs.length - 1];
    if (run !== undefined && number === (run[run.length - 1] ?? 0) + 1) run.push(number);
    else runs.push([number]);
  }
  const words = runs.flatMap((run) => (run.length > 2 ? [`${run[0]}–${run[run.length - 1]}`] : run.map(String)));
  return `panel${numbers.length === 1 ? '' : 's'} ${words.join(', ')}`;
}
