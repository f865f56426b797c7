import { thirdOctaveBands } from '@boothwright/acoustics';
import type { AssemblyLayer, BoothSpec, Material } from '@boothwright/language';
import { openFaces } from './booth/geometry.js';
import { liesOnFloor } from './booth/lies-on-floor.js';
import { hertz } from './text/hertz.js';
import { joined } from './text/joined.js';
import { boothUnread } from './unread/booth-unread.js';

/** What the prediction does not know, in sentences. */
export function leavesOut(spec: BoothSpec, refused: ReadonlyMap<string, string> = new Map()): string[] {
  const sentences = [
    ...(spec.unread.length > 0
      ? ['The text has errors: what could not be read is left out, and no requirement that depends on it is judged.']
      : []),
    ...[...refused].map(
      ([name, why]) =>
        `${name} is not assessed: ${why}. Its hazards are not judged either: fresh air, the way out, the alarm and the floor are for you to look at.`,
    ),
    'Sound that travels through the floor, the joists and the walls of the building, and footfall, is not predicted; it can set the limit at low frequency.',
    'Workmanship is not predicted beyond the gaps that the text gives: one forgotten joint or a pipe touching both leaves can cost 10 dB or more.',
    'Sound below 50 Hz and above the 5 kHz band is not predicted.',
    'Measuring rooms and homes differ: in the lowest bands a wall in a laboratory and the same wall in a booth can differ by more than the stated range.',
  ];
  sentences.push(...fibreBelowItsFit(spec));
  if (spec.booths.length === 0) {
    return [
      ...sentences,
      'The text has no booth, so leaks, doors, air and weight are not looked at: a wall alone is always better than a booth.',
    ];
  }
  sentences.push(
    'Resonances of single panels, rattles and the bass lift of a close directional microphone are not predicted.',
    'A voice has energy below 160 Hz that no published spectrum here holds: a low voice is heard further than is said.',
    'Sound is taken to surround the booth evenly; a source on one side, or a wall close by, shifts single bands by several decibels.',
    'Dampers, filters, narrow bars of a grille and folded ducts make more noise of the air than is said; what enters through the wall of a duct is counted for sheet steel and lined hoses alone, and what a fan sends out through it is not predicted.',
    'The room around the booth is taken to keep its temperature; sun, radiators and what warms the room are not counted.',
  );
  if (spec.session?.effort.value === 'casual') {
    sentences.push(
      'The level of a casual voice rests on a figure from memory; the other efforts are a published spectrum.',
    );
  }
  // What a booth with errors lacks may stand in the part that could not be read.
  const readable = spec.booths.filter((booth) => boothUnread(spec, booth.name).length === 0);
  const onTheFloor = readable.filter((booth) => booth.faces.floor === undefined).map((booth) => booth.name);
  if (onTheFloor.length > 0) {
    sentences.push(
      `The floor of ${joined(onTheFloor)} is not described: it is taken as the hard floor of the building, through which no airborne sound is counted.`,
    );
  }
  const flat = readable.filter(liesOnFloor).map((booth) => booth.name);
  if (flat.length > 0) {
    sentences.push(
      `The floor of ${joined(flat)} lies on the floor of the building, without air beneath: no airborne sound is counted through it.`,
    );
  }
  for (const booth of readable) {
    const open = openFaces(booth);
    if (open.length > 0) {
      sentences.push(`No build-up is given for ${joined(open)} of ${booth.name}: it is counted as an opening.`);
    }
    if (booth.linings.some((lining) => lining.layers.length > 0)) continue;
    sentences.push(`${booth.name} has no lining in the text: its inside is as bare as its build-ups.`);
  }
  return sentences;
}

/** Frequency over flow resistivity, m3/kg, from which the fit for fibre was made (see `mikiPorous`). */
const fitFrom = 0.01;

/** Fibre so dense that the lowest bands lie below the range of the fit it is computed with. */
function fibreBelowItsFit(spec: BoothSpec): string[] {
  const layers = [...spec.assemblies.values(), ...spec.booths.flatMap((booth) => booth.linings)].flatMap(
    (build) => build.layers,
  );
  const lowest = thirdOctaveBands[0]?.lower ?? 0;
  const limits = new Map<string, number>();
  for (const { kind, name, resistivity } of layers.flatMap(materialsOf)) {
    if (kind !== 'porous' || resistivity === undefined) continue;
    if (lowest / resistivity.value < fitFrom) limits.set(name, fitFrom * resistivity.value);
  }
  if (limits.size === 0) return [];
  const words = [...limits].map(([name, hz]) => `${name} below ${hertz(hz)}`);
  return [
    `Fibre is computed with a fit to measurements that does not reach down to ${joined(words)}: there it is carried on beyond its range.`,
  ];
}

function materialsOf(layer: AssemblyLayer): Material[] {
  if (layer.kind === 'material') return [layer.material];
  return layer.kind === 'frame' && layer.fill !== undefined ? [layer.fill.material] : [];
}
