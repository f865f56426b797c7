import type { JudgedContext } from '../assessment-context.js';
import { decimals } from '../text/decimals.js';
import { textRange } from '../text/text-range.js';
import type { Found } from './found.js';
import { missedRequirements } from './missed-requirements.js';

/** Panels are heavier than asked: how wide, or how high, they may be. */
export function panelTooHeavy(context: JudgedContext): Found[] {
  return missedRequirements(context, 'panel-weight').flatMap(({ requirement, assessed: { booth, result } }) => {
    const { limit } = requirement;
    const over = result.build.panels.filter((panel) => panel.massKg > limit);
    const heaviest = over.reduce((best, panel) => (panel.massKg > best.massKg ? panel : best), over[0] as never);
    if (over.length === 0 || booth.panels === undefined) return [];
    // Mass goes with width but for the two edge members, so the share of the width is a little too large.
    const width = Math.floor(((heaviest.widthM * limit) / heaviest.massKg) * 100) / 100;
    const height = Math.floor(((heaviest.heightM * limit) / heaviest.massKg) * 100) / 100;
    const whole = (metres: number) => decimals(metres * 1000, 0);
    const isWall = heaviest.face !== 'roof' && heaviest.face !== 'floor';
    return [
      {
        id: 'panel-too-heavy',
        severity: 'warning' as const,
        range: requirement.range,
        message: `${booth.name}: ${over.length === 1 ? `panel ${heaviest.number} weighs` : `${over.length} panels are over the ${decimals(limit, 0)} kg asked, the heaviest, panel ${heaviest.number} (${heaviest.name}),`} ${over.length === 1 ? '' : 'with '}${decimals(heaviest.massKg, 1)} kg`,
        explanation: `It is ${whole(heaviest.widthM)} x ${whole(heaviest.heightM)} mm, with sheets, frame and fill; lining, latches and hinges are not in it.${heaviest.heaviestLeafKg === null ? '' : ` Carried leaf by leaf the heavier is ${decimals(heaviest.heaviestLeafKg, 1)} kg.`}`,
        source: 'Mass of the parts of each panel. docs/findings/panel-too-heavy.md',
        fix: `Panels of about ${whole(width)} mm instead of ${whole(heaviest.widthM)} mm stay at the limit${isWall ? `, or a joint at about ${whole(height)} mm of the height` : ''}; every cut brings two more studs and a seam to seal.`,
        figures: {
          limitKg: limit,
          heaviestKg: heaviest.massKg,
          panelsOver: over.length,
          widthM: heaviest.widthM,
          aimedWidthM: width,
        },
        related: [{ range: textRange(booth.panels.range), message: 'how the faces are cut' }],
      },
    ];
  });
}
