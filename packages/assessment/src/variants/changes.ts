import { nominalHz } from '../bands/grid.js';
import type { AssemblyResult, BoothResult, VariantResult } from '../result/result-document.js';
import { hertz } from '../text/hertz.js';

type Change = VariantResult['changes'][number];
type Figures = Map<string, { readonly value: number | null; readonly unit: string }>;

interface Results {
  readonly assemblies: Readonly<Record<string, AssemblyResult>>;
  readonly booths: Readonly<Record<string, BoothResult>>;
  /** Booths with a fan whose sound power is not known. */
  readonly unknownFans: ReadonlySet<string>;
}

/** Changes below this share of the larger figure are rounding, not news. */
const leastChange = 1e-9;

/**
 * Figures that differ between the base and a variant, in the order of the base. Where a variant moves other air with a
 * fan of unknown sound power, its noise inside is not that of the base: it is not known, and stands as null.
 */
export function changesBetween(base: Results, variant: Results): Change[] {
  const before = figuresOf(base);
  const after = figuresOf(variant);
  for (const name of variant.unknownFans) {
    if (flowOf(base.booths[name]) === flowOf(variant.booths[name])) continue;
    for (const what of noiseFigures) {
      const figure = after.get(`${name}: ${what}`);
      if (figure !== undefined) after.set(`${name}: ${what}`, { ...figure, value: null });
    }
  }
  const names = [...new Set([...before.keys(), ...after.keys()])];
  return names.flatMap((what) => {
    const from = before.get(what);
    const to = after.get(what);
    const change = {
      what,
      base: from?.value ?? null,
      variant: to?.value ?? null,
      unit: from?.unit ?? to?.unit ?? '',
    };
    return differs(change.base, change.variant) ? [change] : [];
  });
}

/** Figures of the noise inside that a fan of unknown sound power leaves open. */
const noiseFigures = [
  'noise inside',
  'noise inside unweighted',
  'noise criterion',
  'room tone',
  'loudest band inside',
] as const;

/** m3/s with the fan on; zero without one. */
function flowOf(booth: BoothResult | undefined): number {
  return booth?.air?.fanOn?.flowM3PerS ?? 0;
}

function differs(a: number | null, b: number | null): boolean {
  if (a === null || b === null) return a !== b;
  return Math.abs(a - b) > leastChange * Math.max(Math.abs(a), Math.abs(b));
}

/** The band of a voice for which build-ups are compared: third octaves from 100 Hz to 4 kHz. */
export const voiceBand = { fromHz: 100, toHz: 4000 } as const;

/** Arithmetic mean of the transmission loss over the voice band, dB. */
export function voiceBandMean(transmissionLoss: readonly number[]): number {
  const inBand = transmissionLoss.filter((_, band) => {
    const hz = nominalHz[band] as number;
    return hz >= voiceBand.fromHz && hz <= voiceBand.toHz;
  });
  return inBand.reduce((sum, loss) => sum + loss, 0) / inBand.length;
}

function figuresOf({ assemblies, booths }: Pick<Results, 'assemblies' | 'booths'>): Figures {
  const figures: Figures = new Map();
  const put = (what: string, value: number | null, unit: string) => figures.set(what, { value, unit });
  for (const [name, assembly] of Object.entries(assemblies)) {
    put(`${name}: STC`, assembly.ratings.stc, '');
    put(`${name}: Rw`, assembly.ratings.rw, 'dB');
    put(`${name}: Rw + Ctr,50-5000`, assembly.ratings.rw + assembly.ratings.ctr50To5000, 'dB');
    put(`${name}: mean transmission loss 100 Hz to 4 kHz`, voiceBandMean(assembly.transmissionLossDb), 'dB');
    assembly.transmissionLossDb.forEach((loss, band) => {
      put(`${name}: transmission loss at ${hertz(nominalHz[band] as number)}`, loss, 'dB');
    });
    put(`${name}: lowest resonance`, assembly.resonancesHz[0] ?? null, 'Hz');
    put(`${name}: surface mass`, assembly.surfaceMassKgPerM2, 'kg/m2');
    put(`${name}: thickness`, assembly.thicknessM * 1000, 'mm');
  }
  for (const [name, booth] of Object.entries(booths)) {
    const { noise, build, air, voiceOutside } = booth;
    put(`${name}: noise inside`, noise.total.dBA?.value ?? null, 'dBA');
    put(`${name}: noise inside unweighted`, noise.total.dBZ?.value ?? null, 'dB');
    put(`${name}: noise criterion`, noise.total.nc?.value ?? null, 'NC');
    for (const source of noise.bySource) put(`${name}: ${source.name} inside`, source.inside.dBA?.value ?? null, 'dBA');
    put(`${name}: room tone`, noise.roomTone?.dBFS.value ?? null, 'dBFS');
    put(`${name}: STC of the whole booth`, booth.ratings.stc, '');
    put(`${name}: Rw of the whole booth`, booth.ratings.rw, 'dB');
    const worst = loudestBand(noise.total.byBand);
    put(`${name}: loudest band inside`, worst?.level ?? null, worst === null ? 'dB' : `dB at ${hertz(worst.hz)}`);
    put(`${name}: voice outside`, voiceOutside?.dBA?.value ?? null, 'dBA');
    for (const { place, session } of booth.voiceAt) {
      if (place !== null) put(`${name}: voice in ${place}`, session?.dBA?.value ?? null, 'dBA');
    }
    for (const { text, hoursMet } of noise.hours?.requirements ?? []) {
      put(`${name}: hours of the day that meet ${text.replace(/^require /, '')}`, hoursMet, 'h');
    }
    put(`${name}: swings on its mounts at`, noise.mounts?.naturalHz ?? null, 'Hz');
    put(`${name}: decay at 125 Hz`, decayAt(booth, 125), 's');
    put(`${name}: decay at 125 Hz over the middle bands`, booth.roomSound?.ratio125 ?? null, '');
    put(`${name}: CO2 at the end of the session`, (air?.fanOn ?? air?.fanOff)?.endPpm ?? null, 'ppm');
    put(`${name}: mass`, build.massKg, 'kg');
    put(`${name}: floor load`, build.floorLoadPa / 1000, 'kPa');
    put(`${name}: problems of moving in and putting up`, booth.moving?.problems.length ?? null, '');
    put(`${name}: outside height`, booth.geometry.outsideM[2], 'm');
    put(`${name}: cost with reserve`, costToBuild(build.cost), build.cost?.currency ?? '');
  }
  return figures;
}

/**
 * The list with its reserve, what it buys too few of included: another board is not free because nobody has listed it.
 * Null where something that is needed has no price.
 */
function costToBuild(cost: BoothResult['build']['cost']): number | null {
  if (cost === null || cost.unpriced.length > 0) return null;
  return cost.amount > 0 ? (cost.withReserve * (cost.amount + cost.missing)) / cost.amount : cost.withReserve;
}

/** s; null where nothing rings there. */
function decayAt({ roomSound }: BoothResult, hz: number): number | null {
  return roomSound?.decay.find((band) => band.hz === hz)?.seconds ?? null;
}

function loudestBand(levels: readonly (number | null)[]): { level: number; hz: number } | null {
  let best: { level: number; hz: number } | null = null;
  levels.forEach((level, band) => {
    if (level !== null && (best === null || level > best.level)) best = { level, hz: nominalHz[band] as number };
  });
  return best;
}
