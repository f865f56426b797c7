import { flowForCo2 } from '@boothwright/acoustics';
import type { Booth } from '@boothwright/language';
import type { JudgedContext } from '../assessment-context.js';
import { ductArea } from '../booth/openings/duct-area.js';
import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
import { textRange } from '../text/text-range.js';
import { aimedSpeed } from './fast-air-in-duct.js';
import type { Found } from './found.js';
import { missedRequirements } from './missed-requirements.js';

/** There is a fan, and still the CO2 passes the limit that the text asks for, at the setting at which it is judged. */
export function moreAirNeeded(context: JudgedContext): Found[] {
  return missedRequirements(context, 'co2').flatMap(({ requirement, assessed: { booth, result } }): Found[] => {
    const { air } = result;
    // Without air from any fan, and with a fan that rests in takes, other findings say what helps.
    if (air === null || air.fanOn === null || air.takes?.fanInTake === 'off') return [];
    const off = air.judged === 'off';
    const fan = off ? air.fanOff : air.fanOn;
    const { takes } = air;
    const reached = takes === null || off ? fan.endPpm : Math.max(takes.firstPeakPpm, takes.lastPeakPpm);
    const { limit, range, text } = requirement;
    // A room that the booth breathes from fills up as well. In the long run it settles where its own fresh air carries off
    // all that is breathed, whatever the fan of the booth moves: what stands in the booth less what its own air leaves there.
    const settled =
      fan.steadyPpm !== null && fan.flowM3PerS > 0
        ? fan.steadyPpm - (1e6 * air.generationM3PerS) / fan.flowM3PerS
        : air.supplyPpm;
    const fills = settled > air.supplyPpm + 1;
    const flow = flowForCo2({ limit, supply: settled, generation: air.generationM3PerS });
    const litres = (value: number) => decimals(value * 1000, 1);
    const figures: Record<string, number> = {
      endPpm: reached,
      limitPpm: limit,
      supplyPpm: air.supplyPpm,
      flowLPerS: fan.flowM3PerS * 1000,
    };
    const found: Omit<Found, 'fix'> = {
      id: 'more-air-needed',
      severity: 'warning',
      range,
      message: `${booth.name}: with ${off ? 'the fan off, as the session says,' : `${litres(fan.flowM3PerS)} L/s`} the CO2 reaches ${decimals(reached, 0)} ppm${takes === null || off ? '' : ' in its takes'}, where \`${text}\` is asked`,
      explanation: `Breath brings ${decimals(air.generationM3PerS * 3.6e6, 0)} L of CO2 an hour into ${decimals(air.volumeM3, 1)} m3, and the supply air brings ${decimals(air.supplyPpm, 0)} ppm already. In the long run the concentration settles at supply + G/Q, whatever the volume.`,
      source: 'Mass balance of a well-mixed space, Q = G / (limit - supply). docs/findings/more-air-needed.md',
      figures,
      related: booth.vents
        .filter((vent) => vent.fan !== undefined)
        .map((vent) => ({ range: textRange(vent.nameRange), message: 'the vent with the fan' })),
    };
    const running = [air.fanLow, air.fanHigh].filter((curve) => curve !== null && curve.flowM3PerS > fan.flowM3PerS);
    const enough = running.find((curve) => curve !== null && curve.endPpm <= limit);
    if (enough !== null && enough !== undefined) {
      return [
        {
          ...found,
          fix: `Run the fan ${enough.setting} in the session: ${litres(enough.flowM3PerS)} L/s end at ${decimals(enough.endPpm, 0)} ppm. It is heard more then.`,
          figures: { ...figures, endPpmThen: enough.endPpm },
          meets: true,
        },
      ];
    }
    if (flow === null) {
      return [
        {
          ...found,
          fix: fills
            ? `No flow of the booth can hold it in the long run: the room itself settles at ${decimals(settled, 0)} ppm with the fresh air that it has. Give the room more fresh air, air it between sessions, or take the air from outdoors.`
            : `No flow can hold it: the supply air stands at ${decimals(air.supplyPpm, 0)} ppm. Air the room first, or take the air from outdoors.`,
          figures: { ...figures, settledSupplyPpm: settled },
        },
      ];
    }
    const session = fills ? flowForCo2({ limit, supply: air.supplyPpm, generation: air.generationM3PerS }) : null;
    const diameter = Math.sqrt((4 * flow) / aimedSpeed / Math.PI);
    return [
      {
        ...found,
        fix: `${litres(flow)} L/s hold ${decimals(limit, 0)} ppm in the long run, however long the session${fills ? `: the room itself settles at ${decimals(settled, 0)} ppm then` : ''}.${session === null ? '' : ` For a session of ${decimals(air.sessionMinutes, 0)} min about ${litres(session)} L/s are enough.`} A clear area of ${decimals((flow / aimedSpeed) * 1e4, 0)} cm2, a round duct of ${decimals(diameter * 1000, 0)} mm or more, keeps that air slow enough not to hiss${ductsWords(booth, flow / aimedSpeed)}; shorter sessions with the door open between them need less.`,
        figures: { ...figures, neededFlowLPerS: flow * 1000, aimedDiameterM: diameter },
        meets: true,
      },
    ];
  });
}

/** Whether the ducts that are there are as wide; nothing for a booth without any. */
function ductsWords({ vents }: Booth, area: number): string {
  if (vents.length === 0) return '';
  // A millimetre of the diameter is no difference.
  const narrow = vents.filter((vent) => ductArea(vent) < 0.98 * area).map(({ name }) => name);
  if (narrow.length === 0) return `, and the ${vents.length > 1 ? 'ducts' : 'duct'} of this booth can carry it so`;
  return `; ${joined(narrow)} ${narrow.length > 1 ? 'are' : 'is'} narrower`;
}
