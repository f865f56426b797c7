/** From the folder of one file to another file, as a `use` writes it; both are paths below the same folder. */
export function relativePath(from: string, to: string): string {
  const start = from.split('/').slice(0, -1);
  const end = to.split('/');
  let same = 0;
  while (same < start.length && same < end.length - 1 && start[same] === end[same]) same++;
  const up = '../'.repeat(start.length - same);
  return `${up === '' ? './' : up}${end.slice(same).join('/')}`;
}
