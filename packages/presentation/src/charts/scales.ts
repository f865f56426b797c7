export type Scale = (value: number) => number;

/** Evenly from `domain` onto `range`. */
export function linearScale([low, high]: readonly [number, number], [from, to]: readonly [number, number]): Scale {
  return (value) => from + ((value - low) / (high - low)) * (to - from);
}

/** Equal ratios of `domain`, which is above zero, onto equal distances of `range`. */
export function logScale([low, high]: readonly [number, number], range: readonly [number, number]): Scale {
  const even = linearScale([Math.log(low), Math.log(high)], range);
  return (value) => even(Math.log(value));
}
