import type { Booth } from '@boothwright/language';
import { faceArea, faceNames, outsideSize } from '../booth/geometry.js';
import type { SealingResult, SealResult } from '../result/parts-result.js';
import { faceExtents } from './face-extents.js';
import type { PanelDivision } from './panels.js';

/**
 * Every seam that lets air through, by the metre: where two panels, two walls, wall and roof or wall and floor meet, doors
 * along their sides, head and threshold, windows around frame and pane, ducts where they pass a face. Seams of panels that
 * come apart get a gasket under compression, the rest sealant. Which seal a seam gets is common practice; lengths follow
 * from the geometry. A wall of two shells has its seams twice.
 */
export function sealingOf(booth: Booth, division: PanelDivision): SealingResult {
  const extents = faceExtents(booth);
  const apart = booth.panels !== undefined;
  const seams: SealResult[] = [];
  const put = (place: string, kind: SealResult['kind'], metres: number, pieces: number, fixed = false) => {
    if (metres > 1e-6) seams.push({ place, kind, metres, pieces, fixed });
  };
  const joint = apart ? 'compression gasket' : 'sealant';

  for (const face of faceNames) {
    const own = division.built.filter(({ result }) => result.face === face).map(({ result }) => result);
    let metres = 0;
    let pieces = 0;
    own.forEach((panel, index) => {
      const next = own[index + 1];
      if (next === undefined || next.leaf !== panel.leaf) return;
      const above = Math.abs(next.offsetM - panel.offsetM) < 1e-9;
      if (above) {
        metres += panel.widthM;
        pieces += 1;
        return;
      }
      // Where one of two neighbours is cut in two heights, the seam runs up the whole wall all the same.
      const column = own.filter((p) => p.leaf === next.leaf && Math.abs(p.offsetM - next.offsetM) < 1e-9);
      metres += column.reduce((sum, p) => sum + p.heightM, 0);
      pieces += 1;
    });
    put(`between the panels of the ${face}`, joint, metres, pieces);
  }

  const walls = extents.filter(({ face }) => face !== 'roof' && face !== 'floor');
  for (const leaf of ['whole', 'outer', 'inner'] as const) {
    const of = walls.filter((extent) => extent.leaf === leaf);
    const long = of.filter(({ face }) => face === 'front' || face === 'back');
    const short = of.filter(({ face }) => face === 'left' || face === 'right');
    const suffix = leaf === 'whole' ? '' : `, ${leaf} shell`;
    const corners = long.length * short.length;
    put(`corners of the walls${suffix}`, joint, corners * (of[0]?.heightM ?? 0), corners);
    const around = of.reduce((sum, extent) => sum + extent.lengthM, 0);
    if (extents.some(({ face }) => face === 'roof')) put(`walls to roof${suffix}`, joint, around, of.length);
    put(`walls to floor${suffix}`, joint, around, of.length);
  }
  for (const door of booth.doors) {
    const { width, height } = door.size;
    put(`door ${door.name}, sides and head`, 'door gasket', 2 * height.value + width.value, 3);
    put(`door ${door.name}, threshold`, 'threshold seal', width.value, 1);
  }
  for (const window of booth.windows) {
    const around = 2 * (window.size.width.value + window.size.height.value);
    put(`window ${window.name}, frame in the wall`, 'sealant', around, 1, true);
    put(`window ${window.name}, around the pane`, 'glazing tape', around, 1, true);
  }
  for (const vent of booth.vents) {
    const { duct } = vent;
    const around = duct.kind === 'round' ? Math.PI * duct.diameter.value : 2 * (duct.width.value + duct.height.value);
    put(`duct of ${vent.name} through the ${vent.face}`, 'sealant', around, 1, true);
  }
  const kinds = [...new Set(seams.map(({ kind }) => kind))];
  return {
    seams,
    totals: kinds.map((kind) => ({
      kind,
      metres: seams.filter((seam) => seam.kind === kind).reduce((sum, seam) => sum + seam.metres, 0),
    })),
    missing: missing(booth, division),
  };
}

function missing(booth: Booth, division: PanelDivision): string[] {
  const bare = faceNames.filter((face) => face !== 'floor' && booth.faces[face] === undefined);
  const open = bare.filter((face) => faceArea(outsideSize(booth), face) > 0);
  return [
    ...(division.why === null ? [] : [`Seams between panels are not in it: ${division.why}.`]),
    ...(open.length === 0 ? [] : [`Seams along ${open.join(', ')} are not in it: no build-up is given.`]),
    'Joints between boards of one panel are not in it: they lie on studs and get sealant or tape.',
  ];
}
