import type { Air } from '../air/air-properties.js';
import { airGapFluid, frictionOnly } from '../layered/air-gap-fluid.js';
import { add, type Complex, complex, divide, multiply, scale } from '../math/complex.js';
import { criticalFrequencyOf } from '../panels/critical-frequency.js';
import type { Plate } from '../panels/plate.js';
import { shearParameterOf } from '../panels/shear-parameter.js';
import { stiffnessOfPlate } from '../panels/stiffness-of-plate.js';
import { delanyBazleyPorous } from '../porous/delany-bazley-porous.js';
import { johnsonChampouxAllardPorous } from '../porous/johnson-champoux-allard-porous.js';
import { limpFrame } from '../porous/limp-frame.js';
import { mikiPorous } from '../porous/miki-porous.js';
import { equivalentFluid, type PorousMedium } from '../porous/porous-medium.js';
import type { AbsorberBacking, AbsorberLayer, AbsorberPorous } from './absorber-layer.js';
import { type MouthDensities, perforatedImpedance, slottedImpedance } from './perforated-impedance.js';

/** Impedance in series: `fixed` + sin^4(theta) `bending`/(1 + `shear` sin^2(theta)), Pa s/m. */
type Sheet = { readonly fixed: Complex; readonly bending: Complex; readonly shear?: number };
/** A fluid by k_z^2 = `square` - `trace` k^2 sin^2(theta) and Z k_z = `product`. */
type Fluid = {
  readonly square: Complex;
  readonly product: Complex;
  readonly trace: Complex;
  readonly thickness: number;
};

/** An absorber at one frequency, from the backing to the room. */
export type PreparedAbsorber = {
  readonly steps: readonly (Sheet | Fluid)[];
  readonly rigid: boolean;
  /** rad/m, in air */
  readonly wavenumber: number;
  readonly airImpedance: number;
  /** cos(theta) at which a plate of the absorber is in step with the sound; a sum over directions alone asks for them. */
  readonly coincidences: () => readonly number[];
};

/** Pressure and normal velocity of the wave at the face towards the room, up to a common factor. */
export type FaceState = { readonly pressure: Complex; readonly velocity: Complex };

/** Mean free path in air, m, about (common practice): in a thinner gap there is no gas to speak of. */
const thinnestGap = 7e-8;

const zero = complex(0);
const one = complex(1);

/** Works out everything that does not depend on the angle; layers run from the backing to the room. */
export function prepareAbsorber(
  layers: readonly AbsorberLayer[],
  backing: AbsorberBacking,
  hz: number,
  air: Air,
): PreparedAbsorber {
  const behind: readonly AbsorberLayer[] =
    typeof backing === 'string'
      ? []
      : backing.kind === 'limp'
        ? [{ kind: 'limp-sheet', surfaceMass: backing.surfaceMass }]
        : backing.layers;
  const all = [...behind, ...layers].filter(isThere);
  const omega = 2 * Math.PI * hz;
  const steps = all.map((layer, index) => stepOf(layer, all[index - 1], all[index + 1], hz, air));
  return {
    steps,
    rigid: backing === 'rigid',
    wavenumber: omega / air.soundSpeed,
    airImpedance: air.impedance,
    coincidences: () => all.flatMap((layer) => coincidenceOf(layer, hz, air)),
  };
}

/** One layer between its two neighbours, at one frequency. */
function stepOf(
  layer: AbsorberLayer,
  towardsBacking: AbsorberLayer | undefined,
  towardsRoom: AbsorberLayer | undefined,
  hz: number,
  air: Air,
): Sheet | Fluid {
  const omega = 2 * Math.PI * hz;
  switch (layer.kind) {
    case 'air-gap': {
      // Friction damps the sharp resonances of sound that runs along the gap.
      const fluid = airGapFluid(layer.thickness, hz, air, frictionOnly, 0)!;
      return { ...fluid, trace: layer.partitioned ? zero : fluid.trace, thickness: layer.thickness };
    }
    case 'porous': {
      const { characteristicImpedance, wavenumber } = absorberMedium(layer, hz, air);
      return {
        square: multiply(wavenumber, wavenumber),
        product: multiply(characteristicImpedance, wavenumber),
        trace: layer.partitioned ? zero : one,
        thickness: layer.thickness,
      };
    }
    case 'plate': {
      const { ratio, shear } = bendingOf(layer, hz, air);
      const mass = omega * layer.density * layer.thickness;
      return {
        fixed: complex(0, mass),
        bending: { re: mass * ratio ** 2 * layer.lossFactor, im: -mass * ratio ** 2 },
        shear,
      };
    }
    case 'limp-sheet':
      return { fixed: complex(0, omega * layer.surfaceMass), bending: zero };
    case 'screen':
      return { fixed: carried(complex(layer.flowResistance), layer.surfaceMass, omega), bending: zero };
    case 'perforated':
    case 'slotted': {
      const mouths: MouthDensities = {
        front: densityIn(towardsRoom, hz, air),
        back: densityIn(towardsBacking, hz, air),
      };
      const openings =
        layer.kind === 'perforated'
          ? perforatedImpedance(layer, hz, air, mouths)
          : slottedImpedance(layer, hz, air, mouths);
      return { fixed: carried(openings, layer.surfaceMass, omega), bending: zero };
    }
  }
}

/** Frequency over the critical one, and how far the plate yields in shear. */
function bendingOf(plate: Plate, hz: number, air: Air): { readonly ratio: number; readonly shear: number } {
  const stiffness = stiffnessOfPlate(plate);
  return {
    ratio: hz / criticalFrequencyOf(plate.density * plate.thickness, stiffness, air),
    shear: shearParameterOf(plate, stiffness, hz, air),
  };
}

/** cos(theta) at which the bending wave of a plate runs along with the sound: sin^4 (f/fc)^2 = 1 + s sin^2, s its shear. */
function coincidenceOf(layer: AbsorberLayer, hz: number, air: Air): number[] {
  if (layer.kind !== 'plate') return [];
  const { ratio, shear } = bendingOf(layer, hz, air);
  const sineSquared = (shear + Math.sqrt(shear * shear + 4 * ratio * ratio)) / (2 * ratio * ratio);
  return sineSquared < 1 ? [Math.sqrt(1 - sineSquared)] : [];
}

/**
 * The wave at the face towards the room for a wave at cos(theta) = `cosine`.
 *
 * Each fluid is crossed by the reflection at its far face, r exp(-2 j k_z d), so that no thickness overflows; pressure and
 * velocity are known up to a factor, which neither impedance nor absorption needs.
 */
export function faceState(absorber: PreparedAbsorber, cosine: number): FaceState {
  const { steps, wavenumber, airImpedance, rigid } = absorber;
  const sineSquared = 1 - cosine * cosine;
  let pressure: Complex = one;
  let velocity: Complex = rigid ? zero : complex(cosine / airImpedance);
  for (const step of steps) {
    if ('fixed' in step) {
      const impedance = add(
        step.fixed,
        scale(step.bending, (sineSquared * sineSquared) / (1 + (step.shear ?? 0) * sineSquared)),
      );
      pressure = add(pressure, multiply(impedance, velocity));
      continue;
    }
    const traceSquared = wavenumber * wavenumber * sineSquared;
    const kz = decayingRoot({
      re: step.square.re - traceSquared * step.trace.re,
      im: step.square.im - traceSquared * step.trace.im,
    });
    const impedance = divide(step.product, kz);
    const drop = multiply(impedance, velocity);
    const reflected = divide(
      { re: pressure.re - drop.re, im: pressure.im - drop.im },
      { re: pressure.re + drop.re, im: pressure.im + drop.im },
    );
    const size = Math.exp(2 * kz.im * step.thickness);
    const phase = -2 * kz.re * step.thickness;
    const back = multiply(reflected, { re: size * Math.cos(phase), im: size * Math.sin(phase) });
    pressure = multiply(impedance, { re: 1 + back.re, im: back.im });
    velocity = { re: 1 - back.re, im: -back.im };
  }
  return { pressure, velocity };
}

/** The medium of a porous layer at one frequency. */
export function absorberMedium(layer: AbsorberPorous, hz: number, air: Air): PorousMedium {
  const porosity = layer.model === 'johnson-champoux-allard' ? layer.porosity : 1;
  const rigidFrame =
    layer.model === 'johnson-champoux-allard'
      ? johnsonChampouxAllardPorous(layer, hz, air)
      : layer.model === 'miki'
        ? mikiPorous(layer.flowResistivity, hz, air)
        : delanyBazleyPorous(layer.flowResistivity, hz, air);
  return layer.density === undefined ? rigidFrame : limpFrame(rigidFrame, hz, layer.density, air, porosity);
}

function isThere(layer: AbsorberLayer): boolean {
  switch (layer.kind) {
    case 'limp-sheet':
      return layer.surfaceMass > 0;
    case 'screen':
      return layer.flowResistance > 0;
    case 'perforated':
    case 'slotted':
      // A sheet of no thickness still narrows the flow.
      return true;
    case 'air-gap':
      return layer.thickness > thinnestGap;
    default:
      return layer.thickness > 0;
  }
}

/** Effective density of what a hole opens into, kg/m3. */
function densityIn(neighbour: AbsorberLayer | undefined, hz: number, air: Air): Complex {
  if (neighbour?.kind !== 'porous') return complex(air.density);
  return equivalentFluid(absorberMedium(neighbour, hz, air), hz).density;
}

/** Openings beside the mass of the sheet they are in: air goes through and pushes it as well. */
function carried(openings: Complex, surfaceMass: number | undefined, omega: number): Complex {
  if (surfaceMass === undefined) return openings;
  const mass = complex(0, omega * surfaceMass);
  return divide(multiply(openings, mass), add(openings, mass));
}

/** The root of a wave that does not grow as it travels. */
function decayingRoot({ re, im }: Complex): Complex {
  const size = Math.sqrt(re * re + im * im);
  const rootIm = -Math.sqrt(Math.max(0, (size - re) / 2));
  const rootRe = Math.sqrt(Math.max(0, (size + re) / 2));
  return { re: im > 0 ? -rootRe : rootRe, im: rootIm };
}
