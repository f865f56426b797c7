import type { BoothResult, ResultDocument } from '@boothwright/assessment';
import { formatFigures, formatNumber } from '../numbers/format-number.js';
import { printable } from '../text/printable.js';
import { joinLines, ofBooth, section } from '../text/section.js';
import type { TextStyle } from '../text/text-style.js';
import { textTable } from '../text/text-table.js';
import { wrapText } from '../text/wrap-text.js';
import { fittingsSection } from './fittings-section.js';
import { lengthsSection } from './lengths-section.js';
import { mm } from './mm.js';
import { sheetsSection } from './sheets-section.js';
import { shoppingSection } from './shopping-section.js';

/** What to buy, how to cut it, and what to seal, booth by booth: paper for the workshop. */
export function renderPartsText(result: ResultDocument, style: TextStyle): string {
  const booths = Object.entries(result.booths);
  if (booths.length === 0) return 'The text has no booth that could be worked out, so there are no parts.\n';
  const sections = booths.flatMap(([name, { build }]) => {
    const suffix = ofBooth(name, booths.length);
    return [
      panelsSection(build, suffix, style),
      shoppingSection(build, suffix, style),
      fittingsSection(build, suffix, style),
      cutListSection(build, suffix, style),
      sheetsSection(build, suffix, style),
      lengthsSection(build, suffix, style),
      sealingSection(build, suffix, style),
      loadsSection(build, suffix, style),
    ];
  });
  return `${sections.filter(Boolean).join('\n\n')}\n`;
}

type Build = BoothResult['build'];
const right = 'right' as const;

function panelsSection(build: Build, suffix: string, style: TextStyle): string | undefined {
  const { panels, panelsWhy, panelNotes } = build;
  const lines = (text: string) => wrapText(text, style.width, '  ');
  if (panelsWhy !== null) {
    const help = 'Write `panels { width 600 mm }` into the booth to get panels, a cut list and layouts.';
    return section(`Panels${suffix}`, lines(`None: ${panelsWhy}. ${help}`), style);
  }
  const table = textTable(
    [
      { head: 'no.', align: right },
      { head: 'place' },
      { head: 'width', align: right },
      { head: 'height', align: right },
      { head: 'thick', align: right },
      { head: 'kg', align: right },
      { head: 'falls at', align: right },
      { head: '' },
    ],
    panels.map((panel) => [
      String(panel.number),
      panel.name,
      mm(panel.widthM),
      mm(panel.heightM),
      mm(panel.thicknessM),
      `${formatNumber(panel.massKg, 1)}${panel.massMissing.length > 0 ? '+' : ''}`,
      panel.tipAngleDegrees === null ? '' : `${formatNumber(panel.tipAngleDegrees, 1)}°`,
      panel.openings.map(({ kind, name }) => `${kind} ${printable(name)}`).join(', '),
    ]),
  );
  const missing = [...new Set(panels.flatMap(({ massMissing }) => massMissing))];
  const notes = [
    'Sizes in mm, seen from outside, numbered from the left. Without lining, door leaf and pane.',
    ...(missing.length > 0 ? [`+ without ${missing.map(printable).join(', ')}, whose density is not given.`] : []),
    ...panelNotes.map(printable),
  ];
  return section(`Panels${suffix}`, joinLines(table, ...notes.map(lines)), style);
}

function cutListSection({ parts }: Build, suffix: string, style: TextStyle): string | undefined {
  if (parts.length === 0) return undefined;
  const table = textTable(
    [
      { head: 'mark' },
      { head: 'count', align: right },
      { head: 'size in mm', align: right },
      { head: 'of' },
      { head: 'as' },
      { head: 'for' },
      { head: 'kg', align: right },
    ],
    parts.map((part) => [
      part.mark,
      String(part.count),
      part.form === 'stick' ? mm(part.lengthM) : `${mm(part.widthM)} × ${mm(part.lengthM)}`,
      printable(part.stock),
      part.cutOutM2 > 0 ? `${part.use}, cut out` : part.use,
      printable(part.owner),
      part.massKg === null ? '–' : formatNumber(part.massKg * part.count, 1),
    ]),
  );
  return section(
    `Cut list${suffix}`,
    joinLines(
      table,
      wrapText('Linings are cut to fit in place and are in the list of what to buy.', style.width, '  '),
    ),
    style,
  );
}

function sealingSection({ sealing }: Build, suffix: string, style: TextStyle): string | undefined {
  if (sealing.seams.length === 0) return undefined;
  const table = textTable(
    [{ head: 'metres', align: right }, { head: 'seal' }, { head: 'place' }],
    [
      ...sealing.seams.map(({ metres, kind, place }) => [formatNumber(metres, 2), kind, printable(place)]),
      ...sealing.totals.map(({ metres, kind }) => [formatNumber(metres, 1), kind, 'in all']),
    ],
  );
  const notes = sealing.missing.map((note) => wrapText(printable(note), style.width, '  '));
  return section(`Seams to seal${suffix}`, joinLines(table, ...notes), style);
}

function loadsSection({ structure, loadedMassKg, floorLoadPa, footprintM2 }: Build, suffix: string, style: TextStyle) {
  const lines = (text: string) => wrapText(text, style.width, '  ');
  const table = textTable(
    [
      { head: 'wall' },
      { head: 'm', align: right },
      { head: 'kg', align: right },
      { head: 'kN/m', align: right },
      { head: 'joists' },
    ],
    structure.lineLoads.map(({ face, lengthM, massKg, nPerM, joists }) => [
      face,
      formatNumber(lengthM, 2),
      formatNumber(massKg),
      formatNumber(nPerM / 1000, 2),
      joists ?? '',
    ]),
  );
  const beside = structure.beside.map(
    ({ name, pa, ratio }) => `${formatNumber(pa / 1000, 2)} kPa in ${name} (${formatNumber(ratio, 1)} times)`,
  );
  return section(
    `Loads on the floor${suffix}`,
    joinLines(
      lines(
        `${formatNumber(loadedMassKg)} kg in use on ${formatFigures(footprintM2)} m²: ${formatNumber(floorLoadPa / 1000, 2)} kPa as a mean.`,
      ),
      lines(`Often quoted for floors of homes, second-hand: ${beside.join(', ')}.`),
      structure.lineLoads.length > 0 && table,
      lines(
        `Deck, people, contents and boxes of air paths: ${formatNumber(structure.deckMassKg)} kg.${structure.perMountN === null ? '' : ` Each mount bears ${formatNumber(structure.perMountN / 1000, 2)} kN as a mean, those at the corners more.`}`,
      ),
      structure.joistWords !== null && lines(structure.joistWords),
      lines(`Not counted: ${structure.notCounted.join('; ')}.`),
      lines(structure.words),
    ),
    style,
  );
}
