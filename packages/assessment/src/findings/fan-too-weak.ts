import type { JudgedContext } from '../assessment-context.js';
import { decimals } from '../text/decimals.js';
import { textRange } from '../text/text-range.js';
import type { Found } from './found.js';

/** What moves less than this share of its stated flow is not what was bought. Our own. */
export const enoughOfStated = 0.8;

/** A fan with a curve that does not get its air through the path. */
export function fanTooWeak({ booths }: JudgedContext): Found[] {
  return booths.flatMap(({ booth, result }) => {
    const high = result.ventilation.high;
    const driven = booth.vents.filter((vent) => vent.fan?.curve !== undefined);
    if (high === null || driven.length === 0) return [];
    const stated = driven.reduce((sum, vent) => sum + (vent.fan?.flow.value ?? 0), 0) / driven.length;
    const flow = high.flowM3PerS;
    if (flow !== null && flow >= enoughOfStated * stated) return [];
    const litres = (value: number) => decimals(value * 1000, 1);
    const parts = result.ventilation.vents.flatMap(({ name, pressure }) => pressure.map((each) => ({ name, ...each })));
    const worst = parts.toSorted((a, b) => b.pa - a.pa)[0];
    const vent = driven[0] as (typeof driven)[number];
    return [
      {
        id: 'fan-too-weak',
        severity: 'warning' as const,
        range: textRange(vent.nameRange),
        message:
          flow === null
            ? `${vent.name}: the curve of the fan never meets its air path`
            : `${vent.name}: the fan moves ${litres(flow)} L/s through this path, not the ${litres(stated)} L/s that are stated`,
        explanation: `Every bend, lining and grille takes pressure, and a fan gives less air the more it has to press.${high.notes.length > 0 ? ` ${high.notes.join(' ')}` : ''}`,
        source: 'Fan curve against the pressure loss of the whole path. docs/findings/fan-too-weak.md',
        fix: `${worst === undefined ? 'Widen the path' : `The ${worst.part} of ${worst.name} takes most, ${decimals(worst.pa, 0)} Pa: widen it`}, or take a fan with more pressure; pressure goes with the square of the speed, so a duct a third wider takes a third of it.`,
        figures: { statedLPerS: stated * 1000, flowLPerS: flow === null ? 0 : flow * 1000 },
        related: [],
      },
    ];
  });
}
