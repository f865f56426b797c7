import type { MovingResult, ReflectionsResult } from '@boothwright/assessment';
import { checkSpec } from '@boothwright/language';
import type { Report, ReportSection } from '../../src/report/blocks.js';
import { renderReportMarkdown } from '../../src/report/render-report-markdown.js';
import type { ReportInput } from '../../src/report/report-input.js';
import { alcove } from '../fixtures/sample-booth.js';
import { sampleResult } from '../fixtures/sample-result.js';

// Invented figures that look like a prediction; they come from no booth and no model.

export const sampleText = `# A sample for tests. Everything in it is invented.

material cork "pressed cork" {
  kind    panel
  density 200 kg/m3
  modulus 30 MPa
  source  "invented demo data"
}

assembly shell { cork 20 mm }
`;

const range = { file: 'sample.booth', from: 0, to: 5 };

export const sampleMoving: MovingResult = {
  ways: [{ name: 'doorway', kind: 'doorway', range }],
  cards: [
    {
      panel: 1,
      name: 'back 1',
      face: 'back',
      widthM: 0.446,
      heightM: 2.042,
      thicknessM: 0.0945,
      massKg: 26.4,
      massKnown: true,
      people: 2,
      props: false,
      ways: [
        {
          way: 'doorway',
          passes: 'goes',
          pose: 'upright',
          angleDeg: 0,
          diagonal: false,
          leftM: 0.058,
          lengthM: 0.446,
          longestM: null,
          text: 'goes',
        },
      ],
      raised: {
        diagonalM: 2.044,
        leftOnRoomFloorM: 0.4,
        leftInPlaceM: 0.38,
        passes: 'goes',
        text: 'stands up in place with 380 mm left',
      },
    },
    {
      panel: null,
      name: 'leaf of door entry',
      face: 'front',
      widthM: 0.66,
      heightM: 1.9,
      thicknessM: 0.095,
      massKg: 31.2,
      massKnown: false,
      people: 2,
      props: false,
      ways: [
        {
          way: 'doorway',
          passes: 'does-not-go',
          pose: 'tilted',
          angleDeg: 12,
          diagonal: false,
          leftM: -0.02,
          lengthM: 0.66,
          longestM: 1.8,
          text: 'too long by 20 mm',
        },
      ],
      raised: null,
    },
  ],
  roof: null,
  sides: [{ side: 'back', toWallM: 0.05, freeM: 0.05, obstacle: null, reachable: false }],
  obstacles: [],
  doors: [],
  assembly: {
    possible: true,
    steps: [
      {
        step: 1,
        what: 'back wall: stand it up',
        panels: [1],
        fastenedFrom: 'inside',
        why: 'nobody gets behind it later',
      },
    ],
    blockedBy: [],
    assumes: ['two of you hold it'],
  },
  problems: [
    { id: 'booth-hits-obstacle', subject: 'pipe', text: 'pipe is in the way: 20 mm missing', fix: 'move it', range },
  ],
  asks: ['headroom of the landing'],
  leavesOut: ['Panels are rigid boxes.'],
};

const sampleReflections: ReflectionsResult = {
  mouthM: [0.5, 0.6, 1.2],
  mouthStated: false,
  microphoneM: [0.5, 0.4, 1.2],
  directM: 0.2,
  limitDb: -20,
  early: [
    {
      name: 'window view',
      kind: 'window',
      range,
      atM: [0.5, 0, 1.2],
      delayMs: 2.4,
      pathDifferenceM: 0.82,
      absorption: 0.03,
      levelDb: -14,
      firstNullHz: 208,
      peakDb: 1.6,
      dipDb: -1.9,
      strong: true,
      covered: null,
      todo: 'hang 50 mm of fibre before it',
    },
  ],
  response: {
    hz: [50, 100, 200, 400],
    levelDb: [-4, 3, -8, 1],
    spreadDb: 4.6,
    deepest: { hz: 200, levelDb: -8 },
    highest: { hz: 100, levelDb: 3 },
  },
  responseWhy: null,
  places: [],
  best: null,
  loudspeakers: [],
  leavesOut: ['The sample has no head before the microphone.'],
};

const checked = checkSpec('sample.booth', { read: () => ({ kind: 'text', text: sampleText }) });

export const sampleInput: ReportInput = {
  result: { ...sampleResult, booths: { alcove: { ...alcove, moving: sampleMoving, reflections: sampleReflections } } },
  spec: checked.spec,
  problems: [],
  texts: new Map([['sample.booth', sampleText]]),
};

/** A section alone, as Markdown. */
export function sectionText(section: ReportSection | undefined): string {
  if (section === undefined) return '';
  const report: Report = { title: '', subtitle: '', front: [], sections: [section] };
  const text = renderReportMarkdown(report);
  return text.slice(text.indexOf('## '));
}
