import type { Booth, Vent } from '@boothwright/language';
import type { FittingResult, SealingResult } from '../result/parts-result.js';

/** Latches to a seam that comes apart, at the least: one at either end. Evidence: common practice. */
export const latchesPerSeam = 2;

/**
 * What is bought by the piece or metre and not cut from a sheet: ducts, grilles, fans, springs, sets of door hardware, what
 * stands or hangs inside, and latches of a booth that comes apart. Nothing of it is priced here.
 */
export function fittingsOf(booth: Booth, sealing: SealingResult): FittingResult[] {
  const piece = (what: FittingResult['what'], name: string, owner: string, quantity = 1): FittingResult => ({
    what,
    name,
    owner,
    unit: 'piece',
    quantity,
    atLeast: false,
    massKg: null,
  });
  const seams = sealing.seams
    .filter(({ kind }) => kind === 'compression gasket')
    // Walls stand on their floor by their own weight.
    .filter(({ place }) => !place.startsWith('walls to floor'))
    .reduce((sum, { pieces }) => sum + pieces, 0);
  return [
    ...booth.vents.flatMap((vent): FittingResult[] => [
      { ...piece('duct', ductName(vent), vent.name), unit: 'm', quantity: vent.run.value },
      ...(vent.grille === undefined
        ? []
        : [
            piece(
              'grille',
              `grille ${mm(vent.grille.size.width.value)} x ${mm(vent.grille.size.height.value)} mm`,
              vent.name,
            ),
          ]),
      ...(vent.fan === undefined ? [] : [piece('fan', `fan of ${round(vent.fan.flow.value * 1000)} L/s`, vent.name)]),
    ]),
    ...booth.doors.map(({ name }) => piece('door hardware', 'hinges, handle and closer', name)),
    ...booth.equipment.map(({ name, title, mass }) => ({
      ...piece('equipment', title ?? name, name),
      massKg: mass?.value ?? null,
    })),
    ...(booth.mounts === undefined
      ? []
      : [piece('mount', 'springs under the booth', booth.name, booth.mounts.count.value)]),
    ...(seams === 0 ? [] : [{ ...piece('latch', 'latches', booth.name, seams * latchesPerSeam), atLeast: true }]),
  ];
}

function ductName({ duct, wall }: Vent): string {
  const kind = wall.value === 'flexible' ? 'flexible duct' : 'duct';
  return duct.kind === 'round'
    ? `${kind} ${mm(duct.diameter.value)} mm`
    : `${kind} ${mm(duct.width.value)} x ${mm(duct.height.value)} mm`;
}

function mm(metres: number): string {
  return String(Number((metres * 1000).toFixed(1)));
}

function round(value: number): string {
  return String(Number(value.toFixed(2)));
}
