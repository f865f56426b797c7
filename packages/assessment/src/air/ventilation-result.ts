import { type Air, pathPressure } from '@boothwright/acoustics';
import type { Booth } from '@boothwright/language';
import { ductPathLoss } from '../booth/openings/duct-loss.js';
import type { Memo } from '../memo/memo.js';
import type { FlowResult, VentAirResult, VentilationResult } from '../result/air-result.js';
import { textRange } from '../text/text-range.js';
import { airWayWords } from './air-way-words.js';
import { type BoothFlow, boothFlow } from './booth-flow.js';
import { freshAir, gapArea } from './fresh-air.js';
import { ventResistances } from './vent-resistance.js';
import { ventSections } from './vent-sections.js';

/** Flow, speed, pressure and sound of every vent side by side, at both speeds of the fans. */
export function ventilationResult(booth: Booth, air: Air, memo: Memo): VentilationResult {
  const way = freshAir(booth);
  const [low, high] = [boothFlow(booth, 'low', air, memo), boothFlow(booth, 'high', air, memo)];
  return {
    way: way.way,
    wayNote: airWayWords(way, booth.vents),
    gapAreaM2: gapArea(booth),
    low: flowResult(low),
    high: flowResult(high),
    vents: booth.vents.map((vent): VentAirResult => {
      const at = (flow: BoothFlow) => flow.byVent.find((entry) => entry.vent === vent);
      const [slow, fast] = [at(low), at(high)];
      const sound = ductPathLoss(vent, air);
      const direction = fast?.direction ?? way.byVent.find((entry) => entry.vent === vent)?.direction ?? null;
      const speed = (flow: number | undefined, area: number) => (flow === undefined ? null : flow / area);
      return {
        name: vent.name,
        range: textRange(vent.nameRange),
        direction,
        directionStated: vent.fan === undefined || vent.fan.direction !== undefined,
        opensTo: vent.opensTo.value,
        flowLowM3PerS: slow?.flow ?? null,
        flowHighM3PerS: fast?.flow ?? null,
        sections: ventSections(vent).map(({ part, area }) => ({
          part,
          areaM2: area,
          lowMPerS: speed(slow?.flow, area),
          highMPerS: speed(fast?.flow, area),
        })),
        pressure: fast === undefined ? [] : pressureByPart(fast, air),
        sound: sound.parts.map(({ part, loss }) => ({ part, lossDb: loss })),
        soundLossDb: sound.alongDuct,
      };
    }),
  };
}

function flowResult(flow: BoothFlow): FlowResult | null {
  if (flow.way === 'no-fan' || flow.way === 'no-way-out') return null;
  return {
    flowM3PerS: flow.flow,
    neededPa: flow.needed,
    givenPa: flow.given,
    boothPressurePa: flow.boothPressure,
    gapSpeedMPerS: flow.gaps?.speed ?? null,
    notes: flow.notes,
  };
}

function pressureByPart(entry: BoothFlow['byVent'][number], air: Air): VentAirResult['pressure'] {
  const byPart = new Map<VentAirResult['pressure'][number]['part'], number>();
  for (const { part, element } of ventResistances(entry.vent, entry.direction)) {
    byPart.set(part, (byPart.get(part) ?? 0) + pathPressure([element], entry.flow, air));
  }
  return [...byPart].map(([part, pa]) => ({ part, pa }));
}
