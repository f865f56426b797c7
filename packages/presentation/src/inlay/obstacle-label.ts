import type { BoothResult } from '@boothwright/assessment';

/** `in the way`, or nothing for what is not. */
export function obstacleLabel(obstacle: string, { moving }: BoothResult): string | undefined {
  return moving?.obstacles.find(({ name }) => name === obstacle)?.collides ? 'in the way' : undefined;
}
