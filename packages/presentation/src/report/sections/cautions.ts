import { type Caution, isDeadly } from '@boothwright/assessment';
import { type Block, blocks, heading, type ReportSection, table, text } from '../blocks.js';
import type { ReportInput } from '../report-input.js';

/** Every hazard with its number, the reason and whom to ask. */
export function cautionsSection({ result }: ReportInput): ReportSection {
  const { cautions, allowances } = result;
  const of = (wanted: Caution['severity']) => cautions.filter(({ severity }) => severity === wanted);
  const own = of('caution');
  return {
    id: 'cautions',
    title: 'Cautions',
    lead: 'Hazards to people and to the building. None of this replaces local codes and licensed practice; ask before you build.',
    blocks: blocks(
      group('Stop, to clear before anything is built', of('stop')),
      group('Hazards that can kill', own.filter(isDeadly)),
      group(
        'From the facts of this text',
        own.filter((caution) => !isDeadly(caution)),
      ),
      group('With any booth', of('note')),
      cautions.length === 0 && text('No booth could be worked out, so no hazard is judged. That is no clearance.'),
      ...(allowances.length > 0
        ? blocks(
            heading('Allowed by a comment in the text'),
            table(
              'Findings and cautions that the text allows, told nowhere else',
              [{ head: 'name' }, { head: 'state' }, { head: 'what' }, { head: 'reason given' }],
              allowances.map(({ id, state, told, note, reason }) => [
                id,
                state,
                state === 'allowed' ? told.join('; ') : note,
                reason,
              ]),
            ),
          )
        : []),
    ),
  };
}

function group(title: string, cautions: readonly Caution[]): Block[] {
  return cautions.length === 0
    ? []
    : blocks(heading(title), cautionsTable(`${title}: number, reason, whom to ask`, cautions));
}

/** Hazard, number, reason, whom to ask. */
export function cautionsTable(caption: string, cautions: readonly Caution[]): Block | undefined {
  return table(
    caption,
    [{ head: 'hazard' }, { head: 'number' }, { head: 'why' }, { head: 'whom to ask, what to do' }],
    // Several booths may have the same hazard in the same words.
    [
      ...new Map(
        cautions.map(({ hazard, number, why, ask }) => [
          [hazard, number, why, ask].join('\n'),
          [hazard, number ?? '', why, ask],
        ]),
      ).values(),
    ],
  );
}
