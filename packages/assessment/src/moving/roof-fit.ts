import type { Booth, Site } from '@boothwright/language';
import { assemblyThickness } from '../assembly/thickness.js';
import { outsideSize } from '../booth/geometry.js';
import type { RoofFit, SideGap } from '../result/moving-result.js';
import { decimals } from '../text/decimals.js';
import { joined } from '../text/joined.js';
import { ceilingOver } from './ceiling-over.js';
import { metres, millimetresLeft, millimetresMissing } from './lengths.js';
import { type MovingPanel, outerPanels } from './moving-panel.js';
import { passes } from './passes.js';
import { type Box, rounding, sides, stripBefore } from './place.js';
import { liftGrip, slidePlay } from './practice.js';

/**
 * Whether the roof can be lifted on, with hands under it, or slid on over the walls from a side with floor enough to start
 * level. The roof is taken to lie on the walls.
 */
export function roofFit(
  booth: Booth,
  site: Site,
  box: Box | undefined,
  gaps: readonly SideGap[] | null,
  panels: readonly MovingPanel[],
): RoofFit | null {
  const built = booth.faces.roof;
  const over = ceilingOver(box, site);
  if (built === undefined || over === undefined) return null;
  const [width, depth, height] = outsideSize(booth);
  const roofs = outerPanels(panels, 'roof');
  const walls = sides.flatMap((side) => outerPanels(panels, side));
  const thickness = Math.max(0, ...roofs.map((panel) => panel.thicknessM)) || assemblyThickness(built.assembly.layers);
  const wallTop = Math.max(0, ...walls.map((panel) => panel.baseM + panel.heightM)) || height - thickness;
  const aboveBooth = over.height - height;
  const overWalls = over.height - wallTop;
  const across = Math.max(0, ...roofs.map((panel) => panel.box.widthM)) || width;
  const along = Math.max(0, ...roofs.map((panel) => panel.box.depthM)) || depth;
  const needs = thickness + slidePlay;
  const starts =
    gaps === null || box === undefined
      ? null
      : sides.map((side) => {
          const length = side === 'front' || side === 'back' ? along : across;
          const strip = ceilingOver(stripBefore(box, side, length), site)?.height ?? over.height;
          const high = strip - wallTop >= thickness - rounding;
          // What hangs too low over the start is as good as no floor there.
          const free = high ? (gaps.find((gap) => gap.side === side)?.freeM ?? 0) : 0;
          return { side, freeM: Math.max(0, free), needsM: length };
        });
  const from = starts?.filter(({ freeM, needsM }) => freeM >= needsM - rounding).map(({ side }) => side) ?? null;
  const lift = { needsM: liftGrip, passes: passes(aboveBooth - liftGrip) };
  const room = passes(overWalls - thickness, slidePlay);
  const slide = {
    needsM: needs,
    passes: from !== null && from.length === 0 ? ('does-not-go' as const) : room,
    from: starts,
    sides: from,
  };
  const fit = {
    said: booth.panels?.roof?.value ?? null,
    thicknessM: thickness,
    wallTopM: wallTop,
    ceilingM: over.height,
    ceilingIs: over.name,
    aboveBoothM: aboveBooth,
    overWallsM: overWalls,
    lift,
    slide,
  };
  return { ...fit, text: words(fit) };
}

/** How the roof goes on: as said where that works, else the other way; null where neither does. */
export function roofMethod(fit: Pick<RoofFit, 'said' | 'lift' | 'slide'>): 'lift' | 'slide' | null {
  const works = { lift: fit.lift.passes !== 'does-not-go', slide: fit.slide.passes !== 'does-not-go' };
  if (fit.said !== null && works[fit.said]) return fit.said;
  return works.lift ? 'lift' : works.slide ? 'slide' : null;
}

function words(fit: Omit<RoofFit, 'text'>): string {
  // What works as the text says, or is the easier way, needs no word on the other.
  const method = roofMethod(fit);
  if (method === 'lift' && fit.said !== 'slide') return liftWords(fit);
  if (method === 'slide' && fit.said === 'slide') return slideWords(fit);
  return [liftWords(fit), slideWords(fit)].join('; ');
}

function liftWords({ aboveBoothM, ceilingIs, lift }: Omit<RoofFit, 'text'>): string {
  const above =
    aboveBoothM < 0
      ? `the booth is ${millimetresMissing(aboveBoothM)} higher than the ${ceilingIs}`
      : `${millimetresLeft(aboveBoothM)} between booth and ${ceilingIs}`;
  const hands = `hands need ${millimetresLeft(liftGrip)}`;
  if (lift.passes === 'does-not-go') return `cannot be lifted on: ${above}, ${hands}`;
  return `can be lifted on${lift.passes === 'tight' ? ', only just' : ''}: ${above}, ${hands}`;
}

function slideWords({ overWallsM, wallTopM, thicknessM, slide }: Omit<RoofFit, 'text'>): string {
  const space = `${millimetresLeft(overWallsM)} over walls of ${metres(wallTopM)} for a roof of ${decimals(thicknessM * 1000, 0)} mm`;
  if (passes(overWallsM - thicknessM, slidePlay) === 'does-not-go') return `cannot be slid on: ${space}`;
  const best = [...(slide.from ?? [])].sort((one, two) => two.freeM - two.needsM - (one.freeM - one.needsM))[0];
  if (slide.passes === 'does-not-go' && best !== undefined) {
    return `cannot be slid on: ${space}, but no side has floor to start level: ${best.side} has ${metres(best.freeM)} of ${metres(best.needsM)}`;
  }
  const start =
    slide.sides === null
      ? ', if a side has floor to start level'
      : ` from ${joined(slide.sides.map((side) => `the ${side}`))}`;
  return `can be slid on${start}: ${space}`;
}
