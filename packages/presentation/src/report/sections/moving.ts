import type { BoothResult, MovingCard, MovingResult, PanelResult, PanelWay } from '@boothwright/assessment';
import { panelNumbers } from '../../moving/panel-numbers.js';
import { poseText } from '../../moving/pose-text.js';
import { formatNumber } from '../../numbers/format-number.js';
import { mm } from '../../parts/mm.js';
import { ofBooth } from '../../text/section.js';
import { roomLines } from '../../text/sections/moving.js';
import { type Block, blocks, type Card, heading, list, type ReportSection, table, text } from '../blocks.js';
import type { ReportInput } from '../report-input.js';

/** One card for each thing that is carried, and the order of work. */
export function movingSection({ result }: ReportInput): ReportSection | undefined {
  const booths = Object.entries(result.booths);
  if (booths.length === 0) return undefined;
  return {
    id: 'moving',
    title: 'Moving cards',
    lead: 'For those who carry: cut along the dashes and hand out. Sizes are of the piece itself, without lining, door leaf and pane.',
    blocks: blocks(
      ...booths.flatMap(([name, booth]) => boothBlocks(booth, ofBooth(name, booths.length), booths.length > 1)),
    ),
  };
}

function boothBlocks({ moving, build }: BoothResult, suffix: string, several: boolean): (Block | undefined)[] {
  if (moving === null) {
    return blocks(
      several && heading(`Moving${suffix}`),
      text('The text has neither a room nor a way in nor panels, so there is nothing to say about moving.'),
    );
  }
  return blocks(
    heading(`Order of work${suffix}`),
    problems(moving),
    ...orderBlocks(moving),
    list([...roomLines(moving).map(capital), ...moving.asks.map((ask) => `Not known: ${ask}`)]),
    moving.cards.length > 0 && heading(`Cards${suffix}`),
    moving.cards.length > 0 && {
      kind: 'cards',
      cards: moving.cards.map((card) => cardOf(card, moving, build.panels)),
    },
    moving.cards.length === 0 && text(`No cards: ${build.panelsWhy ?? 'the text cuts no face into panels'}.`),
  );
}

function problems({ problems: all }: MovingResult): Block | undefined {
  if (all.length === 0) return undefined;
  return {
    kind: 'notice',
    tone: 'stop',
    title: 'Does not go as written',
    blocks: blocks(list(all.map(({ text: words, fix }) => `${words} → ${fix}`))),
  };
}

function orderBlocks({ assembly, cards }: MovingResult): Block[] {
  if (assembly === null) return [];
  if (!assembly.possible) return blocks(text(`No order of work exists: ${assembly.blockedBy.join('; ')}.`));
  return blocks(
    assembly.assumes.length > 0 && text(`If ${assembly.assumes.join(' and ')}:`),
    table(
      'Steps, each with why it comes then',
      [{ head: 'step' }, { head: 'what' }, { head: 'fastened from' }, { head: 'why then' }],
      assembly.steps.map(({ step, what, panels, fastenedFrom, why }) => [
        String(step),
        `${what}${cards.length > 0 && panels.length > 0 ? ` (${panelNumbers(panels)})` : ''}`,
        fastenedFrom ?? '',
        why,
      ]),
    ),
  );
}

function cardOf(card: MovingCard, { assembly }: MovingResult, panels: readonly PanelResult[]): Card {
  const panel = panels.find(({ number }) => number === card.panel);
  const step = assembly?.possible
    ? assembly.steps.find(({ panels: inStep }) => card.panel !== null && inStep.includes(card.panel))
    : undefined;
  const openings = panel?.openings.map(({ kind, name }) => `${kind} ${name}`).join(', ');
  return {
    title: card.panel === null ? card.name : `Panel ${card.panel}: ${card.name}`,
    facts: [
      ['Size', `${mm(card.widthM)} × ${mm(card.heightM)} × ${mm(card.thicknessM)} mm`] as const,
      ['Mass', `${card.massKnown ? '' : 'more than '}${formatNumber(card.massKg, 1)} kg`] as const,
      ['Carried by', `${people(card.people)}${card.props ? ' and props' : ''} (common practice)`] as const,
      ...card.ways.map((way) => [capital(way.way), wayText(way)] as const),
      ...(card.raised ? [['Standing up', card.raised.text] as const] : []),
      ...(openings ? [['Opening', openings] as const] : []),
      ...(panel?.tipAngleDegrees == null
        ? []
        : [['Falls', `once it leans ${formatNumber(panel.tipAngleDegrees, 1)}°, standing alone`] as const]),
      ...(step ? [['Order', `step ${step.step}: ${step.what}`] as const] : []),
    ],
    notes:
      panel && panel.massMissing.length > 0
        ? [`Without ${panel.massMissing.join(', ')}, whose density is not given.`]
        : [],
  };
}

function wayText(way: PanelWay): string {
  if (way.passes === 'does-not-go') return `DOES NOT GO: ${way.text}`;
  const left = `${Math.floor(way.leftM * 1000 + 1e-6)} mm left`;
  return `${poseText(way)}, ${way.passes === 'tight' ? 'only just, ' : ''}${left}`;
}

function people(count: number): string {
  return count === 1 ? 'one person' : `${['', '', 'two', 'three', 'four', 'five', 'six'][count] ?? count} people`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
