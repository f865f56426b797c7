import { type DisplayUnits, shownAtFirst } from '@boothwright/presentation';
import { Option } from 'commander';

/** `--units`: in which units figures are told to a reader; documents for other programs stay in SI units. */
export function unitsOption(): Option {
  const choices: readonly DisplayUnits[] = ['metric', 'imperial'];
  return new Option('--units <UNITS>', 'in which units the text tells figures')
    .choices(choices)
    .default(shownAtFirst.units);
}
