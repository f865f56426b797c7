import type { BoothResult, TextRange } from '@boothwright/assessment';
import { formatQuantity } from '../numbers/format-quantity.js';
import { bandLevel } from '../numbers/level-words.js';

/** A figure that stays in sight while the sheet is scrolled. */
export interface HeadlineFact {
  readonly label: string;
  readonly value: string;
  readonly ends: string;
  readonly range: TextRange | undefined;
}

/** The handful of figures by which a booth is judged; `–` where one cannot be told. */
export function headlineFacts({ noise, voiceOutside, air, build, range }: BoothResult): readonly HeadlineFact[] {
  const ends = (ranged: { readonly low: number; readonly high: number } | null | undefined) =>
    ranged ? `${bandLevel(ranged.low)} to ${bandLevel(ranged.high)}` : '';
  const tone = noise.roomTone?.dBFS;
  const judged = air && [air.fanOff, air.fanLow, air.fanHigh].find((curve) => curve?.setting === air.judged);
  return [
    {
      label: 'noise inside',
      value: noise.total.dBA ? formatQuantity(noise.total.dBA.value, 'dBA') : '–',
      ends: ends(noise.total.dBA),
      range,
    },
    {
      label: 'room tone',
      value: tone ? formatQuantity(tone.value, 'dBFS') : '–',
      ends: ends(tone),
      range,
    },
    {
      label: 'voice outside',
      value: voiceOutside?.dBA ? formatQuantity(voiceOutside.dBA.value, 'dBA') : '–',
      ends: ends(voiceOutside?.dBA),
      range,
    },
    {
      label: 'CO₂ at the end',
      value: judged ? formatQuantity(judged.endPpm, 'ppm') : '–',
      ends: judged ? `fan ${judged.setting}` : '',
      range,
    },
    {
      label: 'in use',
      value: formatQuantity(build.loadedMassKg, 'kg'),
      ends: formatQuantity(build.floorLoadPa, 'Pa'),
      range,
    },
  ];
}
