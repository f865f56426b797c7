import { type AbsorptionCurve, absorptionCurves, absorptionSummary, sampleSize } from './absorption-results.js';
import { leftOut, openings, staggeredStuds, steelStuds, timberStuds } from './constructions.js';
import {
  coverageOf,
  derivedHalfWidths,
  kindOf,
  leaveOneOutCoverage,
  pools,
  shippedHalfWidths,
  zones,
} from './coverage.js';
import { type Curve, groups, insulationCurves, type Spread, summaryOf } from './insulation-results.js';
import { figureOf, type OpenData } from './open-data.js';
import { bandNames, pictures } from './pictures.js';
import { bareCavityAbsorption } from './prediction.js';
import { biasAndRms, errorsWith, variants } from './sensitivity.js';
import { mean, rootMeanSquare } from './statistics.js';
import { likelyCauses } from './worst-curves.js';

/** The page, its pictures by file name, and the lines for the terminal. */
export interface AccuracyReport {
  readonly page: string;
  readonly pictures: Readonly<Record<string, string>>;
  readonly lines: readonly string[];
}

/** Compares everything and words it. */
export function accuracyReport(data: OpenData): AccuracyReport {
  const curves = insulationCurves(data);
  const absorption = absorptionCurves(data);
  const sections = [
    opening(curves, absorption),
    byType(curves),
    byBand(curves),
    curveByCurve(curves),
    worst(curves),
    ranges(curves),
    sensitivitySection(curves),
    absorptionSection(absorption),
    assumptions(data, curves),
    leftOutSection(),
  ];
  return {
    page: `${sections.join('\n\n')}\n`,
    pictures: pictures(curves, absorption),
    lines: summaryLines(curves, absorption),
  };
}

function opening(curves: readonly Curve[], absorption: readonly AbsorptionCurve[]): string {
  const sources = curves.map(({ row }) => `${row.provenance.source}, ${row.provenance.where}`);
  const count = (source: string) => sources.filter((each) => each === source).length;
  const largest = sources.reduce((most, each) => (count(each) > count(most) ? each : most));
  const fromLargest = count(largest);
  return `# How accurate the predictions are

Written by \`npm run accuracy\` out of \`shared/open-data\`; a test holds the page to the figures.

${curves.length} measured curves of transmission loss and ${absorption.length} of absorption are predicted from the construction that their sources describe, with the materials of the catalogue, and compared in the octaves from 125 Hz to 4 kHz. An error is predicted less measured: below zero the prediction is too low, which is the cautious side.

What this is worth:

- **Nothing is fitted.** No figure of a material, size, stud or model was chosen to bring a curve closer; all are listed under [What was assumed](#what-was-assumed). Where a source prints no size, spacing or section, the usual one is taken.
- **It is no blind test.** Which mechanisms the model holds (edges, modes, studs that yield, bays of a cavity) was decided while such curves were looked at. Measurements that were never seen may be met less well.
- **The measured side errs too.** Most rows are representative values of handbooks, read in transcriptions; the sources print no sample size, edge, loss factor or laboratory. The same wall measures 2 to 5 dB apart in different laboratories below 200 Hz (common practice). Rows with printed anomalies are compared all the same.
- ${fromLargest} of the ${curves.length} curves of transmission loss come from one handbook table (${largest}).`;
}

const typesHead = [
  'construction',
  'curves',
  'bias',
  'RMS',
  'STC error',
  'mass law: RMS',
  'STC error',
  'closed forms: RMS',
  'STC error',
];

function typeRows(curves: readonly Curve[]): string[][] {
  const spread = ({ median, worst }: Spread) => `${Number(median.toFixed(1))} / ${worst}`;
  return groups.map((group) => {
    const s = summaryOf(curves, group);
    return [
      group.name,
      String(s.curves),
      signed(s.bias),
      tenths(s.rms),
      spread(s.classErrors),
      tenths(s.massLawRms),
      spread(s.massLawClassErrors),
      tenths(s.closedFormRms),
      spread(s.closedFormClassErrors),
    ];
  });
}

/** Groups in which another model has the smaller root mean square, in words. */
function whereOthersAreNearer(curves: readonly Curve[]): string {
  const names = groups.flatMap((group) => {
    const s = summaryOf(curves, group);
    const nearer = [
      ...(s.massLawRms < s.rms ? [`the mass law by ${tenths(s.rms - s.massLawRms)} dB`] : []),
      ...(s.closedFormRms < s.rms ? [`the closed forms by ${tenths(s.rms - s.closedFormRms)} dB`] : []),
    ];
    return nearer.length > 0 ? [`${group.name} (${nearer.join(', ')})`] : [];
  });
  if (names.length === 0) return 'In every group the RMS of the layered model is the smallest of the three.';
  return `The RMS of the layered model is the smallest of the three but for: ${names.join('; ')}.`;
}

function byType(curves: readonly Curve[]): string {
  return `## By type of construction

dB over the six octaves of all curves of the type. STC error is the size of the error of the class, median / worst; both curves are read off at the third-octave centres by straight lines over the logarithm of frequency, so it is no measured class. In the same run and on the same curves:

- **mass law**: field incidence, of the mass of everything together;
- **closed forms**: B. H. Sharp's three lines of a single leaf and of two leaves, studs as rigid lines, as textbooks give them; each face of a bare cavity absorbs ${bareCavityAbsorption} (common practice); they know no lining of one leaf.

${table(typesHead, typeRows(curves))}

${whereOthersAreNearer(curves)} The closed forms come close for single leaves and stud walls, and fall behind for panes, whose empty cavity they hardly describe. A group of one or two curves says little.

![Single leaves](accuracy/single-leaves.svg)

![Two leaves](accuracy/two-leaf.svg)

![Lined leaves and doors](accuracy/lined-and-doors.svg)`;
}

function byBand(curves: readonly Curve[]): string {
  const cells = (group: (typeof groups)[number]) => {
    const s = summaryOf(curves, group);
    return [
      group.name,
      ...bandNames.map((_, band) => `${signed(s.biasByBand[band]!)} / ${tenths(s.rmsByBand[band]!)}`),
    ];
  };
  return `## By band

Bias / RMS, dB.

${table(['construction', ...bandNames], groups.map(cells))}`;
}

function curveByCurve(curves: readonly Curve[]): string {
  const rows = curves.map((curve) => [
    `${curve.row.name} (\`${curve.row.id}\`)`,
    curve.construction.type,
    whole(curve.measured),
    whole(curve.predicted),
    tenths(rootMeanSquare(curve.errors)),
    `${curve.measuredClass} → ${curve.predictedClass}`,
  ]);
  return `## Curve by curve

dB in the octaves ${bandNames.join(', ')}; measured values as printed, the prediction in whole dB. STC as above, measured → predicted.

${table(['construction', 'type', 'measured', 'predicted', 'RMS', 'STC'], rows)}`;
}

/** Those whose root mean square is largest, worst first. */
export function worstCurves(curves: readonly Curve[], count: number): readonly Curve[] {
  const size = ({ errors }: Curve) => rootMeanSquare(errors);
  return [...curves].sort((a, b) => size(b) - size(a)).slice(0, count);
}

const worstCount = 5;

function worst(curves: readonly Curve[]): string {
  const items = worstCurves(curves, worstCount).map(({ row, errors }) => {
    const cause = likelyCauses[row.id];
    if (cause === undefined) throw new Error(`no likely cause is written down for ${row.id}, one of the worst curves`);
    return `- **${row.name}** (\`${row.id}\`), RMS ${tenths(rootMeanSquare(errors))} dB, by band ${errors.map((error) => signed(error)).join(', ')}. ${cause}`;
  });
  const dips = curves.filter(({ construction }) => kindOf(construction) !== undefined).map(({ errors }) => errors[5]!);
  return `## The worst five

Causes are likely ones; nothing in the tables proves them.

${items.join('\n')}

Seen over all curves without the doors, the spread is largest at 4 kHz (RMS ${tenths(rootMeanSquare(dips))} dB): where a curve has its coincidence, the depth of the dip hangs on the loss factor of the board in place, which no source prints; where it has none, leaks of the sample cap what is measured.`;
}

function ranges(curves: readonly Curve[]): string {
  const shipped = shippedHalfWidths();
  const derived = derivedHalfWidths(curves);
  const share = ({ within, of }: { within: number; of: number }) =>
    `${within} of ${of} (${Math.round((100 * within) / of)} %)`;
  const rows = pools.map((kinds) => [
    kinds.join(', '),
    String(curves.filter(({ construction }) => kinds.includes(kindOf(construction) ?? 'open')).length),
    shipped[kinds[0]!]!.join(' / '),
    derived[kinds[0]!]!.map(tenths).join(' / '),
    share(coverageOf(curves, kinds, shipped)),
    share(leaveOneOutCoverage(curves, kinds)),
  ]);
  const all = pools.flat();
  const zoneWords = zones.map(({ words }) => words).join(' / ');
  return `## Do the stated ranges hold?

The half-widths that every prediction carries ([The range of a prediction](models/uncertainty.md)) are meant to hold nine of ten measured values. They are derived from this comparison: 1.645 times the RMS error by kind of construction and range of bands, and shipped in whole dB. Half-widths in dB ${zoneWords}. "One left out": each curve is judged by half-widths that are derived without it.

${table(['kind', 'curves', 'shipped', 'derived', 'values inside', 'one left out'], rows)}

Together ${share(coverageOf(curves, all, shipped))} lie inside, with one left out ${share(leaveOneOutCoverage(curves, all))}. The two kinds of unframed leaves share their half-widths, since only two curves have fibre or a thin gap. Doors are not counted: their seals are not stated, and leaks have a range of their own. In a booth the range is wider where tolerances are stated and above 55 dB.`;
}

const sensitivityGroups = ['single leaves', 'stud walls', 'all two-leaf', 'all but doors'] as const;

function sensitivitySection(curves: readonly Curve[]): string {
  const chosen = sensitivityGroups.map((name) => groups.find((group) => group.name === name)!);
  const line = (words: string, errors: readonly (readonly number[])[]) => [
    words,
    ...chosen.map((group) => {
      const { bias, rms } = biasAndRms(curves, errors, group);
      return `${signed(bias)} / ${tenths(rms)}`;
    }),
  ];
  const rows = [
    line(
      'as assumed',
      curves.map(({ errors }) => errors),
    ),
    ...variants.map((variant) => line(variant.words, errorsWith(curves, variant))),
  ];
  return `## What hangs on the assumptions

Bias / RMS in dB when one assumption is changed and all others stay. Nothing was chosen by this table; a line that is better than the first was not taken over.

${table(['changed', ...sensitivityGroups], rows)}`;
}

function absorptionSection(curves: readonly AbsorptionCurve[]): string {
  const stated = curves.filter(({ densityStated }) => densityStated);
  const rest = curves.filter(({ densityStated }) => !densityStated);
  const line = (name: string, chosen: readonly AbsorptionCurve[], of: 'infinite' | 'finite') => {
    const s = absorptionSummary(chosen, of);
    const cells = bandNames.map((_, band) => `${signed(s.biasByBand[band]!, 2)} / ${s.rmsByBand[band]!.toFixed(2)}`);
    return [name, String(s.curves), signed(s.bias, 2), s.rms.toFixed(2), ...cells];
  };
  const rows = [
    line('very large sample', curves, 'infinite'),
    line('sample of 10.8 m2', curves, 'finite'),
    line('of these, density stated', stated, 'finite'),
    line('of these, density not stated', rest, 'finite'),
  ];
  const each = curves.map((curve) => [
    `${curve.row.name} (\`${curve.row.id}\`)`,
    `${(curve.flowResistivity / 1000).toFixed(1)}`,
    curve.measured.map((value) => value.toFixed(2)).join(' '),
    curve.infinite.map((value) => value.toFixed(2)).join(' '),
    curve.finite.map((value) => value.toFixed(2)).join(' '),
  ]);
  return `## Absorption of porous layers

${curves.length} rows of fibre whose material and thickness are known, on a hard backing or with a stated air gap, by Miki's regression with the fibre at rest. Where the source states a density, the flow resistivity is that of the law behind the mineral wool of the catalogue (780 ρ^1.59/4.75², read for 38 to 162 kg/m³; at 16 kg/m³ outside its range); else that of \`glass-wool\` or \`felt\` of the catalogue, whatever the grade was. No row of a foam or polyester with known thickness and bare face is at hand.

Measured in a reverberation room, a sample takes in sound at its edges, so that values pass 1 and the prediction for a very large sample is too low; sources print no sample size, ${sampleSize.width} m × ${sampleSize.height} m is assumed. Where a source cuts its values at 1, the prediction for that sample is cut there too.

Absorption coefficient; bias and RMS over all bands, then bias / RMS by band.

${table(['prediction', 'rows', 'bias', 'RMS', ...bandNames], rows)}

At 125 Hz the finite sample is predicted too high, most for thick layers: the diffuse field that the theory assumes does not exist in a reverberation room at that frequency, and edges are not flush.

![Absorption](accuracy/absorption.svg)

Flow resistivity in kPa·s/m².

${table(['row', 'flow resistivity', 'measured', 'very large', 'sample'], each)}`;
}

function assumptions(data: OpenData, curves: readonly Curve[]): string {
  const size = ({ width, height }: { width: number; height: number }) => `${width} m × ${height} m`;
  const millimetres = (metres: number) => `${Number((metres * 1000).toFixed(3))} mm`;
  const ratio = (wood: string, fact: string) => figureOf(data.testWallMaterials, wood, fact);
  const { spacing, halfFlange, sheet, screwSpacing } = steelStuds;
  const compliance = curves.find(({ construction }) => construction.connections[0]?.compliance !== undefined)
    ?.construction.connections[0]?.compliance as number;
  const own = curves
    .filter(({ construction }) => construction.assumed.length > 0)
    .map(({ row, construction }) => `| \`${row.id}\` | ${construction.assumed.join('; ')} |`);
  const flagged = curves
    .filter(({ row }) => row.notes !== undefined)
    .map(({ row }) => `| \`${row.id}\` | ${row.notes!.join('; ')} |`);
  return `## What was assumed

For all curves:

- **Size of the sample**, never printed: walls ${size(openings.wall)}, panes ${size(openings.pane)}, doors ${size(openings.door)} (common practice). Air of 20 °C and 50 %.
- **Materials**: density, modulus, Poisson's ratio, loss factor and flow resistivity of the catalogue (\`shared/open-data/materials.json\`), one row per material. Surface masses that a source prints for a leaf take the place of thickness times density.
- **The grain of wood, a damped sheet**: \`shared/open-data/test-wall-materials.json\`. The grain (modulus across over along ${ratio('oak-board', 'crossModulusRatio')} hardwood, ${ratio('softwood-board', 'crossModulusRatio')} softwood; shear modulus over modulus along ${ratio('oak-board', 'shearModulusRatio')} and ${ratio('softwood-board', 'shearModulusRatio')}) and the loss factor of the damped sheet are from memory. The catalogue of the language has the same grain.
- **Timber studs** every ${millimetres(timberStuds.spacing)}, ${millimetres(timberStuds.width)} wide, rigid. **Separate frames** with studs every ${millimetres(staggeredStuds.spacing)} that tie nothing (common practice).
- **Steel studs** every ${millimetres(spacing)}, screws every ${millimetres(screwSpacing)} (common practice), yielding by ${compliance.toExponential(1)} m²/N: two flanges, each a strip of ${millimetres(halfFlange)} from web to screw, ${millimetres(sheet)} thick, that the board keeps from turning (\`guidedFlangeCompliance\`; derived). The assessment of a text counts studs as rigid.
- Leaks, and frames of panes, carry nothing.

For single curves:

| row | assumed |
|---|---|
${own.join('\n')}

What the table itself notes of rows that are compared:

| row | note |
|---|---|
${flagged.join('\n')}`;
}

function leftOutSection(): string {
  const rows = Object.entries(leftOut).map(([id, reason]) => `| \`${id}\` | ${reason} |`);
  return `## Left out

Rows of \`shared/open-data/transmission-loss.json\` that are not compared:

| row | reason |
|---|---|
${rows.join('\n')}

Of absorption: perforated and microperforated panels, ceilings, faced, sprayed and wedge-shaped rows, whose holes, faces or depths are not all known, and sheep's wool, which the catalogue does not have.`;
}

function summaryLines(curves: readonly Curve[], absorption: readonly AbsorptionCurve[]): string[] {
  const all = pools.flat();
  const { within, of } = coverageOf(curves, all, shippedHalfWidths());
  const out = leaveOneOutCoverage(curves, all);
  const porous = absorptionSummary(absorption, 'finite');
  const large = absorptionSummary(absorption, 'infinite');
  return [
    'Transmission loss, octaves 125 Hz to 4 kHz, dB, predicted less measured; STC error median / worst',
    ...columns([typesHead, ...typeRows(curves)]),
    `Stated 90 % ranges hold ${within} of ${of} values (${Math.round((100 * within) / of)} %); each curve by ranges derived without it: ${out.within} (${Math.round((100 * out.within) / out.of)} %)`,
    `Absorption of ${porous.curves} porous rows: sample of 10.8 m2 bias ${signed(porous.bias, 2)}, RMS ${porous.rms.toFixed(2)}; very large sample bias ${signed(large.bias, 2)}, RMS ${large.rms.toFixed(2)}`,
    `Mean size of the STC error, all but doors: ${tenths(mean(curves.filter(({ construction }) => construction.type !== 'door').map((curve) => Math.abs(curve.predictedClass - curve.measuredClass))))} dB`,
  ];
}

/** Columns of equal width for the terminal; the first to the left, the others to the right. */
function columns(rows: readonly (readonly string[])[]): string[] {
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)));
  return rows.map((row) =>
    row.map((cell, column) => (column === 0 ? cell.padEnd(widths[0]!) : cell.padStart(widths[column]!))).join('  '),
  );
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [line(head), `|${'---|'.repeat(head.length)}`, ...rows.map(line)].join('\n');
}

function tenths(value: number): string {
  return value.toFixed(1);
}

/** With its sign; nothing is shown as -0. */
function signed(value: number, digits = 1): string {
  const text = value.toFixed(digits);
  if (Number(text) === 0) return (0).toFixed(digits);
  return value > 0 ? `+${text}` : `−${text.slice(1)}`;
}

function whole(values: readonly number[]): string {
  return values.map((value) => String(Math.round(value))).join(' ');
}
