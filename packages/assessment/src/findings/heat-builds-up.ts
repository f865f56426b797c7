import type { JudgedContext } from '../assessment-context.js';
import { decimals } from '../text/decimals.js';
import { textRange } from '../text/text-range.js';
import type { Found } from './found.js';

/** Warmer than this above the room a booth is hard to work in, K. Evidence: common practice. */
export const comfortableRise = 4;

/** The booth warms up: what the machines inside add, and how far fresh air would have to go. */
export function heatBuildsUp({ spec: { session }, booths, requirements }: JudgedContext): Found[] {
  return booths.flatMap(({ booth, result }) => {
    const { air } = result;
    const heat = air?.heat;
    const judged = heat?.bySetting.find(({ setting }) => setting === air?.judged);
    if (air === null || heat === null || heat === undefined || judged === undefined) return [];
    const asked = requirements.find(({ kind, booth: name }) => kind === 'temperature-rise' && name === booth.name);
    const limit = asked?.limit ?? comfortableRise;
    if (judged.endRiseK <= limit) return [];
    // With the same walls and air the rise goes with the heat.
    const without = (judged.endRiseK * heat.peopleW) / heat.gainsW;
    const warm = booth.equipment.filter((thing) => (thing.heat?.value ?? 0) > 0);
    const range = asked?.range ?? textRange(session?.heat.range ?? booth.nameRange);
    const watts = (value: number) => `${decimals(value, 0)} W`;
    return [
      {
        id: 'heat-builds-up',
        severity: 'warning' as const,
        range,
        message: `${booth.name} is ${decimals(judged.endRiseK, 1)} K warmer than the room after ${decimals(air.sessionMinutes, 0)} min, where ${decimals(limit, 0)} K ${asked === undefined ? 'are bearable' : 'are asked'}`,
        explanation: `${watts(heat.gainsW)} of dry heat, ${watts(heat.peopleW)} from people and ${watts(heat.equipmentW)} from lamps and equipment, leave through walls of ${decimals(heat.conductanceWPerK, 1)} W/K and with the air. The flow that holds the CO2 does not hold the heat.`,
        source: `Heat balance; ${comfortableRise} K is common practice. docs/findings/heat-builds-up.md`,
        fix:
          heat.equipmentW > 0
            ? `Put what warms outside: without the ${watts(heat.equipmentW)} it would be ${decimals(without, 1)} K${without > limit ? ', still too much: more air, or shorter sessions' : ''}.`
            : 'People alone do this: more air, shorter sessions with the door open between them, or a cooler room.',
        figures: {
          riseK: judged.endRiseK,
          limitK: limit,
          equipmentW: heat.equipmentW,
          riseWithoutEquipmentK: without,
        },
        related: warm.map((thing) => ({
          range: textRange(thing.nameRange),
          message: `${watts(thing.heat?.value ?? 0)} here`,
        })),
      },
    ];
  });
}
