import type { ValidCall } from './valid-calls.js';

/** One wrong argument in an otherwise right call. */
export type WrongCall = { readonly what: string; readonly args: readonly unknown[] };

/** Every call that has one number as `NaN` or negative, or one list of seven values or more that is one short. */
export function wrongCalls({ args, anySign, anyLength }: ValidCall): WrongCall[] {
  const wrong: WrongCall[] = [];
  const walk = (value: unknown, path: string, replace: (by: unknown) => readonly unknown[]) => {
    if (typeof value === 'number') {
      wrong.push({ what: `${path} is NaN`, args: replace(Number.NaN) });
      if (!anySign) wrong.push({ what: `${path} is negative`, args: replace(-1) });
    } else if (Array.isArray(value)) {
      const list: readonly unknown[] = value;
      if (!anyLength && list.length >= 7) wrong.push({ what: `${path} is one short`, args: replace(list.slice(1)) });
      // One band stands for all of them.
      const walked = list.length >= 7 ? [list.length >> 1] : [...list.keys()];
      for (const index of walked) {
        walk(list[index], `${path}[${index}]`, (by) => replace(list.map((each, at) => (at === index ? by : each))));
      }
    } else if (isRecord(value) && !isAir(value)) {
      for (const [name, field] of Object.entries(value)) {
        walk(field, `${path}.${name}`, (by) => replace({ ...value, [name]: by }));
      }
    }
  };
  args.forEach((value, index) => {
    walk(value, `argument ${index + 1}`, (by) => args.map((each, at) => (at === index ? by : each)));
  });
  return wrong;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

/** The air is made by `airProperties`, which checks what it is made of. */
function isAir(value: Record<string, unknown>): boolean {
  return 'soundSpeed' in value;
}
