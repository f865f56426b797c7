/** `panel 3`, `panels 1 to 4, 7 and 9`: numbers in ascending order with runs of three and more drawn together. */
export function numberRuns(word: string, numbers: readonly number[]): string {
  const sorted = [...numbers].sort((one, two) => one - two);
  const runs: number[][] = [];
  for (const number of sorted) {
    const run = runs[runs.length - 1];
    if (run !== undefined && number === (run[run.length - 1] as number) + 1) run.push(number);
    else runs.push([number]);
  }
  const words = runs.flatMap((run) => (run.length > 2 ? [`${run[0]} to ${run[run.length - 1]}`] : run.map(String)));
  const list = words.length < 2 ? words[0] : `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
  return `${word}${sorted.length === 1 ? '' : 's'} ${list ?? 'none'}`;
}
