import { casualSpeechReading, speechBasis } from '@boothwright/acoustics';
import type { BoothSpec, Sourced } from '@boothwright/language';
import { airAssumptions } from './air/air-assumptions.js';
import { referencePanel } from './assembly/reference-panel.js';
import { personAbsorption } from './booth/absorption-area.js';
import { buildAssumptions } from './build/build-assumptions.js';
import { onePersonMass } from './build/one-person-mass.js';
import { comfort, liftGrip, sheetLength, workingGap } from './moving/practice.js';
import { noiseAssumptions } from './noise/noise-assumptions.js';
import { reflectionAssumptions } from './reflections/reflection-assumptions.js';
import type { DefaultUsed } from './result/result-document.js';
import { airWithoutSite } from './site-air.js';
import { textRange } from './text/text-range.js';

/**
 * Every named default behind the values of the spec, in the order of the text. Materials that no build-up uses are left
 * out, the variants too: they bring the defaults of the base.
 */
export function defaultsUsed(spec: BoothSpec): DefaultUsed[] {
  const found = new Map<string, DefaultUsed>();
  const seen = new Set<object>();
  const visit = (node: unknown): void => {
    if (typeof node !== 'object' || node === null || seen.has(node)) return;
    seen.add(node);
    if (isDefault(node)) {
      const { origin, range } = node;
      if (origin.kind === 'default') {
        const key = `${origin.name} ${range.file} ${range.from}`;
        found.set(key, {
          name: origin.name,
          value: valueWords(node.value),
          evidence: origin.evidence,
          source: origin.source,
          range: textRange(range),
        });
      }
    }
    const children = node instanceof Map ? [...node.values()] : Array.isArray(node) ? node : Object.values(node);
    for (const child of children) visit(child);
  };
  visit([...spec.assemblies.values()]);
  visit(spec.site);
  visit(spec.booths);
  visit(spec.session);
  visit(spec.budget);
  return [...found.values(), ...ownAssumptions(spec)];
}

/** What the assessment itself assumes where the text cannot say it. */
function ownAssumptions(spec: BoothSpec): DefaultUsed[] {
  const start = { file: spec.file, from: 0, to: 0 };
  const first = [...spec.assemblies.values()][0];
  const booth = spec.booths[0];
  return [
    ...(first === undefined
      ? []
      : [
          {
            name: 'reference-panel',
            value: `${referencePanel.width} m x ${referencePanel.height} m`,
            evidence: 'from-memory',
            source:
              'size of a laboratory test opening; build-ups are rated at it, the faces of a booth at their own size',
            range: textRange(first.nameRange),
          },
        ]),
    ...(spec.site === undefined
      ? [
          {
            name: 'air-without-site',
            value: `${airWithoutSite.temperature} degC, ${100 * airWithoutSite.relativeHumidity} %`,
            evidence: 'common-practice',
            source: 'a heated room',
            range: start,
          },
        ]
      : []),
    ...(spec.session?.effort.value === 'casual'
      ? [
          {
            name: 'casual-speech',
            value: `${casualSpeechReading} dBA at 1 m`,
            evidence: 'from-memory',
            source: speechBasis('casual').text,
            range: textRange(spec.session.effort.range),
          },
        ]
      : []),
    ...noiseAssumptions(spec),
    ...(booth !== undefined && (spec.session?.people.value ?? 0) > 0
      ? [
          {
            name: 'person-absorption',
            value: personAbsorption.map(({ hz, area }) => `${hz} Hz ${area} m2`).join(', '),
            evidence: 'from-memory',
            source: 'absorption area of one clothed person in textbook tables, which differ by a third',
            range: textRange(booth.nameRange),
          },
        ]
      : []),
    ...airAssumptions(spec),
    ...buildAssumptions(spec),
    ...movingAssumptions(spec),
    ...reflectionAssumptions(spec),
  ];
}

/** Common practice behind moving and putting up; see `moving/practice.ts`. */
function movingAssumptions({ booths }: BoothSpec): DefaultUsed[] {
  const panels = booths.find((booth) => booth.panels !== undefined)?.panels;
  if (panels === undefined) return [];
  const common = { evidence: 'common-practice', range: textRange(panels.range) };
  return [
    {
      name: 'lifters',
      value: `1 per ${onePersonMass} kg, 2 from ${sheetLength} m`,
      source: 'lifting guidance near 23 to 25 kg for one person; two people carry a sheet',
      ...common,
      evidence: 'from-memory',
    },
    {
      name: 'working-gap',
      value: `${workingGap} m`,
      source: 'to work between booth and wall of the room; 0.60 m is comfortable',
      ...common,
    },
    {
      name: 'roof-grip',
      value: `${liftGrip} m`,
      source: 'over a roof that is lifted on; 80 to 100 mm are usual',
      ...common,
    },
    {
      name: 'carrying-clearance',
      value: `${comfort} m`,
      source: 'below it a panel goes only just: a tape measure errs by 5 mm at each end',
      ...common,
    },
  ];
}

function isDefault(node: object): node is Sourced<unknown> {
  const origin = (node as { origin?: unknown }).origin;
  return typeof origin === 'object' && origin !== null && (origin as { kind?: unknown }).kind === 'default';
}

/** SI values as they are; the text of the user's own unit is the presentation's affair. */
function valueWords(value: unknown): string {
  if (typeof value === 'number') return String(Number(value.toPrecision(6)));
  if (typeof value === 'string') return value;
  if (typeof value === 'object' && value !== null && 'decibels' in value) {
    return String((value as { decibels: number }).decibels);
  }
  return JSON.stringify(value);
}
