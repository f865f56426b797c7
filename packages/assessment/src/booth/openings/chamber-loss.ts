import { type Air, plenumLoss, stackAbsorption } from '@boothwright/acoustics';
import type { Vent } from '@boothwright/language';
import { bareChamberAbsorption } from '../../air/path-constants.js';
import { chamberSides } from '../../air/vent-sections.js';
import { constructionOf } from '../../assembly/construction.js';
import { nominalHz, perBand } from '../../bands/grid.js';
import { valuesOnGridHeld } from '../../bands/quantity-table.js';

export interface ChamberLoss {
  /** dB by band, never negative */
  readonly loss: readonly number[];
  readonly notes: readonly string[];
}

/**
 * Loss of a lined box between two ducts, straight through along its longest side.
 *
 * Rule: `plenumLoss` in every band, with inlet and outlet opposite each other, which lets the most sound pass straight on, and
 * the absorption of the lining in front of a hard wall; never below nothing. Units: outlet area m2; result dB.
 * Source: as of `plenumLoss`. Valid: where the wavelength is smaller than the box; below, the source calls it 5 to 10 dB too low.
 */
export function chamberLoss(chamber: Vent['chambers'][number], outletArea: number, air: Air): ChamberLoss {
  const [length, width, height] = chamberSides(chamber);
  const walls = 2 * (length * width + width * height + height * length);
  const absorption = liningAbsorption(chamber, air);
  // An outlet wider than the end of the box is no chamber any more.
  const outlet = Math.min(outletArea, width * height);
  const loss = perBand((band) =>
    Math.max(
      0,
      plenumLoss({
        outletArea: outlet,
        distance: length,
        angleDeg: 0,
        wallArea: walls,
        absorption: Math.min(1, Math.max(1e-3, absorption[band] as number)),
      }),
    ),
  );
  const smallest = air.soundSpeed / length;
  return {
    loss,
    notes: [
      ...((nominalHz[0] as number) < smallest
        ? [
            `a box ${Math.round(length * 1000)} mm long is smaller than the wavelength below ${Math.round(smallest / 10) * 10} Hz, its loss there is 5 to 10 dB more than said`,
          ]
        : []),
      ...(chamber.lining === undefined
        ? [`a box without lining, its walls taken to absorb ${Math.round(100 * bareChamberAbsorption)} %`]
        : []),
    ],
  };
}

function liningAbsorption({ lining }: Vent['chambers'][number], air: Air): readonly number[] {
  const bare = perBand(() => bareChamberAbsorption);
  if (lining === undefined) return bare;
  const stated = lining.material.absorption;
  if (lining.material.resistivity === undefined && stated !== undefined) {
    return valuesOnGridHeld(stated.value) ?? bare;
  }
  const { layers } = constructionOf([lining]);
  return layers.length === 0 ? bare : stackAbsorption(layers, { air, backing: 'rigid' });
}
