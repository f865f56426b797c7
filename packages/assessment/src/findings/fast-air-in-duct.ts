import { weightedTotal } from '@boothwright/acoustics';
import type { Booth, Vent } from '@boothwright/language';
import type { SectionPart } from '../air/vent-sections.js';
import type { JudgedContext } from '../assessment-context.js';
import { summedSpectra } from '../noise/summed-spectra.js';
import type { AirPart } from '../result/noise-result.js';
import { decimals } from '../text/decimals.js';
import { textRange } from '../text/text-range.js';
import { openingNoiseHalfWidth } from '../uncertainty/model-uncertainty.js';
import type { Found } from './found.js';

/**
 * Highest air speed at a free opening that supplies a room of NC 15 to 20, m/s: 300 ft/min. Openings for return air may
 * have 360 ft/min, 1.83 m/s. Source: M. D. Egan, Architectural Acoustics, table "Recommended air velocities at registers
 * and grilles", read at second hand; the author from memory.
 */
export const quietSpeed = 1.52;
/** The same for air that leaves the room. */
export const quietReturnSpeed = 1.83;
/** The speed that the fix aims at, m/s: the lower end of the supply row (250 ft/min). */
export const aimedSpeed = 1.27;

const partWords = {
  duct: 'in the duct',
  chamber: 'in the lined box',
  maze: 'between the boards',
  grille: 'at the grille',
} as const;

/** A hiss that, at the loud end of its range, stays this far below everything else adds nothing, dB. */
const addsNothing = 10;

/** Air in a vent is faster than tables of quiet rooms have it, and what the prediction makes of it. */
export function fastAirInDuct({ booths }: JudgedContext): Found[] {
  return booths.flatMap(({ booth, result }) => {
    // The setting at which the session records.
    const setting = result.noise.bySetting.find(({ session }) => session)?.setting ?? 'off';
    if (setting === 'off') return [];
    const slow = setting === 'low';
    const total = result.noise.total.dBA?.value ?? null;
    return result.ventilation.vents.flatMap(
      ({ name, direction, directionStated, flowLowM3PerS, flowHighM3PerS, sections }) => {
        const opening = booth.vents.find((candidate) => candidate.name === name);
        const flow = slow ? flowLowM3PerS : flowHighM3PerS;
        if (opening === undefined || flow === null) return [];
        // A vent whose direction is only assumed may be the one that supplies.
        const limit = direction === 'out' && directionStated ? quietReturnSpeed : quietSpeed;
        const fastest = sections
          .map(({ part, lowMPerS, highMPerS }) => ({ part, speed: (slow ? lowMPerS : highMPerS) ?? 0 }))
          .reduce((best, section) => (section.speed > best.speed ? section : best), {
            part: 'duct' as const,
            speed: 0,
          });
        if (fastest.speed <= limit) return [];
        const area = flow / aimedSpeed;
        const hiss = hissOf(name, result.noise.airParts);
        const lost = hiss !== null && total !== null && hiss + openingNoiseHalfWidth < total - addsNothing;
        const diameter = Math.sqrt((4 * area) / Math.PI);
        return [
          {
            id: 'fast-air-in-duct',
            severity: lost ? ('information' as const) : ('warning' as const),
            range: textRange(opening.nameRange),
            message: `${name}: the air moves at ${decimals(fastest.speed, 1)} m/s ${partWords[fastest.part]}, where quiet rooms keep below ${decimals(limit, 2)} m/s${hiss === null ? '' : `; its hiss is predicted at ${levelWords(hiss)}`}`,
            explanation: `Air that is fast where it enters the room hisses, and its noise rises steeply with its speed, about 60 lg v. ${hiss === null ? '' : `Predicted: ${levelWords(hiss)} inside, good to ${openingNoiseHalfWidth} dB either way${total === null ? '' : `, of ${decimals(total, 0)} dBA in all`}${lost ? ', so it is lost in the rest' : ''}. `}Dampers, filters and narrow bars, which the text does not know, make more.`,
            source:
              'M. D. Egan, Architectural Acoustics, table of recommended air velocities at registers and grilles, NC 15 to 20, read at second hand, the author from memory; hiss after CIBSE Guide B (2005) as quoted on a help page; speed = flow / clear area. docs/findings/fast-air-in-duct.md',
            fix: `For ${decimals(flow * 1000, 1)} L/s a clear area of ${decimals(area * 1e4, 0)} cm2${fastest.part === 'duct' ? `, a round duct of ${decimals(diameter * 1000, 0)} mm,` : ''} brings it to ${decimals(aimedSpeed, 2)} m/s.`,
            figures: {
              speedMPerS: fastest.speed,
              quietSpeedMPerS: limit,
              flowLPerS: flow * 1000,
              aimedDiameterM: diameter,
              ...(hiss === null ? {} : { hissDbA: hiss }),
            },
            related: [],
            ...(lost ? {} : { fixed: (other: Booth) => widened(other, opening, fastest.part, fastest.speed) }),
          },
        ];
      },
    );
  });
}

/** dBA inside of everything that the air of a vent is heard by; null where nothing is known. */
function hissOf(name: string, parts: readonly AirPart[]): number | null {
  const own = parts.filter(({ vent }) => vent === name);
  return own.length === 0 ? null : weightedTotal(summedSpectra(own.map(({ byBand }) => byBand)), 'A');
}

/** No ear and no microphone tells levels below zero apart. */
function levelWords(level: number): string {
  return level < 0 ? 'less than 0 dBA' : `${decimals(level, 0)} dBA`;
}

/** The booth with the fast section of a vent so wide that its air has the aimed speed; a lined box stays as it is. */
function widened(booth: Booth, vent: Vent, part: SectionPart, speed: number): Booth {
  if (!booth.vents.includes(vent)) return booth;
  const factor = Math.sqrt(speed / aimedSpeed);
  return { ...booth, vents: booth.vents.map((each) => (each === vent ? widerVent(vent, part, factor) : each)) };
}

function widerVent(vent: Vent, part: SectionPart, factor: number): Vent {
  const { duct, maze, grille } = vent;
  const longer = <T extends { readonly value: number }>(side: T): T => ({ ...side, value: side.value * factor });
  const both = <T extends { readonly width: { readonly value: number }; readonly height: { readonly value: number } }>(
    size: T,
  ): T => ({ ...size, width: longer(size.width), height: longer(size.height) });
  if (part === 'grille' && grille !== undefined) return { ...vent, grille: { ...grille, size: both(grille.size) } };
  if (part === 'maze' && maze !== undefined) return { ...vent, maze: { ...maze, channel: both(maze.channel) } };
  if (part !== 'duct') return vent;
  return { ...vent, duct: duct.kind === 'round' ? { ...duct, diameter: longer(duct.diameter) } : both(duct) };
}
