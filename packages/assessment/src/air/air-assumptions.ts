import type { BoothSpec, Session } from '@boothwright/language';
import type { DefaultUsed } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { textRange } from '../text/text-range.js';
import { boardHeat, conductivities } from './layer-heat.js';
import { bareChamberAbsorption, dischargeCoefficient, openDoorDifference, roughness } from './path-constants.js';
import { activityOfEffort, ordinaryActivity, peopleInside } from './people-inside.js';

/** Figures of air paths, open doors and warm walls that the text cannot say, where they enter. */
export function airAssumptions({ booths, session }: BoothSpec): DefaultUsed[] {
  const booth = booths.find(({ vents }) => vents.length > 0) ?? booths[0];
  if (booth === undefined) return [];
  const vent = booth.vents[0];
  const bare = booths.flatMap(({ vents }) => vents).flatMap(({ chambers }) => chambers.filter(({ lining }) => !lining));
  const smooth = booths.flatMap(({ vents }) => vents).find(({ run, wall }) => run.value > 0 && wall.value === 'smooth');
  const cycle = session?.cycle;
  const door = booths.flatMap(({ doors }) => doors)[0];
  return [
    ...(vent === undefined
      ? []
      : [
          {
            name: 'duct-roughness',
            value: `smooth ${roughness.smooth * 1000} mm, flexible or lined ${roughness.flexible * 1000} mm`,
            evidence: 'published',
            source:
              'ASHRAE Handbook, Fundamentals, table of duct roughness factors, as transcribed; a lining is taken like a flexible duct, from memory',
            range: textRange(vent.nameRange),
          },
          {
            name: 'discharge-coefficient',
            value: String(dischargeCoefficient),
            evidence: 'common-practice',
            source: 'sharp-edged openings have 0.6 to 0.65',
            range: textRange(vent.nameRange),
          },
        ]),
    ...(smooth === undefined
      ? []
      : [
          {
            name: 'duct-sheet',
            value: 'sheet steel of 0.6 mm',
            evidence: 'common-practice',
            source:
              'what a smooth duct is made of decides how much sound enters through its wall; plastic pipe keeps less out, boards more',
            range: textRange(smooth.nameRange),
          },
        ]),
    ...(bare[0] === undefined
      ? []
      : [
          {
            name: 'bare-chamber-absorption',
            value: String(bareChamberAbsorption),
            evidence: 'common-practice',
            source: 'bare boards take 0.03 to 0.1',
            range: textRange(bare[0].range),
          },
        ]),
    ...(cycle === undefined || door === undefined
      ? []
      : [
          {
            name: 'open-door-difference',
            value: `${openDoorDifference} K`,
            evidence: 'common-practice',
            source: 'our own: a booth in use is warmer than the room by more, so that the exchange is not overstated',
            range: textRange(cycle.rest.range),
          },
        ]),
    ...(session === undefined ? [] : effortAssumption(session)),
    ...(session === undefined
      ? []
      : [
          {
            name: 'wall-conductivities',
            value: `fibre ${conductivities.fibre} W/(m K), softwood ${conductivities.softwood} W/(m K), covering ${conductivities.covering} W/(m K), boards by density`,
            evidence: 'published',
            source:
              'fibre after a timber-frame wall of dataholz.eu (2023); softwood after EN 12524:2000, Table 1; carpet after CIBSE Guide A, Table 3.37; the last two as transcribed',
            range: textRange(booth.nameRange),
          },
          {
            name: 'board-heat',
            value: `${boardHeat} J/(kg K)`,
            evidence: 'published',
            source: 'gypsum plasterboard, EN 12524:2000, Table 1, as transcribed; wood takes up more',
            range: textRange(booth.nameRange),
          },
        ]),
  ];
}

/** Louder than ordinary speech makes more breath, warmth and moisture of what the text leaves open. */
function effortAssumption(session: Session): DefaultUsed[] {
  const { effort, co2Rate, bodyHeat, bodyMoisture } = session;
  const { met } = activityOfEffort[effort.value];
  const open = [co2Rate, bodyHeat, bodyMoisture].some(({ origin }) => origin.kind === 'default');
  if (met === ordinaryActivity || !open) return [];
  const person = peopleInside(session);
  return [
    {
      name: 'activity-of-effort',
      value: `${decimals(met, 1)} met where ordinary speech has ${ordinaryActivity}: ${decimals(person.breath * 3.6e6, 0)} L/h of CO2, ${decimals(person.dryHeat, 0)} W dry, ${decimals(person.moistHeat, 0)} W moist each`,
      evidence: 'from-memory',
      source:
        'our own, after tables of activities from memory: the body moves with a loud voice; breath goes with the activity (Persily and de Jonge 2017)',
      range: textRange(effort.range),
    },
  ];
}
