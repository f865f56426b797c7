import type { Booth, Budget, Session, Site } from '@boothwright/language';
import { geometryOf } from '../booth/geometry.js';
import type { Memo } from '../memo/memo.js';
import type { PanelResult } from '../result/build-result.js';
import type { BoothResult } from '../result/result-document.js';
import { costOf } from './cost.js';
import { fittingNeeds } from './fitting-checks.js';
import { fittingsOf } from './fittings.js';
import { gravity } from './gravity.js';
import { liningMasses, massByPart } from './mass.js';
import { ownedParts } from './owned-parts.js';
import { panelsOf } from './panels.js';
import { sealingOf } from './sealing.js';
import { shoppingOf } from './shopping-list.js';
import { stockRows } from './stock-rows.js';
import { structureOf } from './structure.js';

export { gravity } from './gravity.js';

/**
 * What the booth weighs, how hard it presses on the floor, and what it is made of: panels, cut list, layouts of sheets and
 * lengths, what to buy, seams.
 *
 * Floor load: (mass of the booth + people + contents) x g / outside footprint, Pa. It is the mean over the footprint: a
 * booth on feet or runners presses harder where it stands. It is a number to show to a qualified person, not a check.
 */
export function buildResult(
  booth: Booth,
  site: Site | undefined,
  session: Session | undefined,
  budget: Budget | undefined,
  memo: Memo,
): BoothResult['build'] {
  const division = panelsOf(booth);
  const parts = massByPart(booth, division);
  const massKg = parts.reduce((sum, part) => sum + part.kg, 0);
  const peopleKg = session === undefined ? 0 : session.people.value * session.bodyMass.value;
  const equipmentKg = booth.equipment.reduce((sum, { mass }) => sum + (mass?.value ?? 0), 0);
  const loadedMassKg = massKg + peopleKg + booth.contents.value + equipmentKg;
  const { footprintM2 } = geometryOf(booth);
  const floorLoadPa = (loadedMassKg * gravity) / footprintM2;
  const panels = division.built.map(({ result }) => result);
  const owned = ownedParts(booth, division);
  const sealing = sealingOf(booth, division);
  const rows = stockRows(booth, division, owned, budget, memo);
  const fittings = fittingsOf(booth, sealing);
  const shopping = shoppingOf(booth, rows, budget, fittingNeeds(sealing, fittings, diametersOf(booth)));
  return {
    massKg,
    massByPart: parts,
    loadedMassKg,
    floorLoadPa,
    footprintM2,
    cost: costOf(budget, [shopping]),
    panels,
    panelsWhy: division.why,
    panelNotes: division.notes,
    heaviestPanel: heaviestOf(panels)?.number ?? null,
    parts: owned.map(({ row }) => row),
    sheetLayouts: rows.flatMap(({ sheets }) => (sheets === undefined ? [] : [sheets])),
    lengthLayouts: rows.flatMap(({ lengths }) => (lengths === undefined ? [] : [lengths])),
    shopping,
    fittings,
    sealing,
    structure: structureOf(booth, site, parts, liningMasses(booth), loadedMassKg, floorLoadPa),
  };
}

/** Diameter of the duct of a vent, m; undefined for one with four sides. */
function diametersOf({ vents }: Booth): (vent: string) => number | undefined {
  return (name) => {
    const duct = vents.find((vent) => vent.name === name)?.duct;
    return duct?.kind === 'round' ? duct.diameter.value : undefined;
  };
}

/** The first of the heaviest panels. */
export function heaviestOf(panels: readonly PanelResult[]): PanelResult | undefined {
  return panels.reduce<PanelResult | undefined>(
    (best, panel) => (best === undefined || panel.massKg > best.massKg + 1e-9 ? panel : best),
    undefined,
  );
}
