import type { BoothSpec } from '@boothwright/language';
import { mouthPlace } from '../booth/mouth-place.js';
import type { DefaultUsed } from '../result/result-document.js';
import { decimals } from '../text/decimals.js';
import { textRange } from '../text/text-range.js';
import { leastFromWall, strongReflection } from './practice.js';

/** What is assumed about the way from mouth to microphone: where the mouth is, and what counts as strong. */
export function reflectionAssumptions({ booths }: BoothSpec): DefaultUsed[] {
  const withMicrophone = booths.filter(({ microphone }) => microphone !== undefined);
  const places = withMicrophone.flatMap((booth): DefaultUsed[] => {
    const mouth = mouthPlace(booth);
    if (mouth === undefined || mouth.stated) return [];
    return [
      {
        name: 'mouth-place',
        value: mouth.at.map((value) => `${decimals(value, 2)} m`).join(', '),
        evidence: 'common-practice',
        source:
          'at the stated distance from the microphone, level with it, along the depth on the side of the middle of the booth',
        range: textRange((booth.microphone ?? booth).range),
      },
    ];
  });
  const first = withMicrophone[0]?.microphone;
  if (first === undefined) return places;
  const range = textRange(first.range);
  return [
    ...places,
    {
      name: 'strong-reflection',
      value: `${strongReflection} dB re the direct sound`,
      evidence: 'common-practice',
      source: 'control rooms keep early reflections 10 to 20 dB down; the value is the project’s own',
      range,
    },
    {
      name: 'least-from-wall',
      value: `${leastFromWall} m`,
      evidence: 'common-practice',
      source: 'head and microphone, where other places for them are tried',
      range,
    },
  ];
}
