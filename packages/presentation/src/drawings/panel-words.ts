import type { BoothResult, PanelResult } from '@boothwright/assessment';
import { panelNumbers } from '../moving/panel-numbers.js';
import { formatNumber } from '../numbers/format-number.js';
import { type DisplayUnits, lengthText } from '../numbers/length-text.js';

/** kg of a panel; `at least` where a material has no density. */
export function panelMass({ massKg, massMissing }: PanelResult): string {
  return `${massMissing.length > 0 ? 'at least ' : ''}${formatNumber(massKg, 1)} kg`;
}

/** The step of building in which a panel goes up; undefined where no order is known. */
export function stepOf(result: BoothResult, panel: PanelResult): number | undefined {
  return result.moving?.assembly?.steps.find(({ panels }) => panels.includes(panel.number))?.step;
}

export function panelRows(
  result: BoothResult,
  units: DisplayUnits,
): { readonly columns: readonly string[]; readonly rows: readonly (readonly string[])[] } {
  return {
    columns: ['panel', 'name', 'size', 'mass', 'step'],
    rows: result.build.panels.map((panel) => [
      String(panel.number),
      panel.name,
      `${lengthText(panel.widthM, units)} × ${lengthText(panel.heightM, units)} × ${lengthText(panel.thicknessM, units)}`,
      panelMass(panel),
      String(stepOf(result, panel) ?? '–'),
    ]),
  };
}

/** The order of building in words, or why there is none. */
export function panelSteps({ moving }: BoothResult): string[] {
  const order = moving?.assembly;
  if (order === null || order === undefined) return ['No order of building is worked out.'];
  if (!order.possible) return [`No order of building is found: ${order.blockedBy.join('; ')}.`];
  return order.steps.map(({ step, what, panels }) => {
    const numbers = panels.length > 0 && !/panels? \d/.test(what) ? ` (${panelNumbers(panels)})` : '';
    return `${step}. ${what}${numbers}`.replace(/(panels?) (?=\d)/g, '$1\u00a0');
  });
}
