import type { Finding, ResultDocument } from '@boothwright/assessment';
import { ofBooth } from '../../text/section.js';
import { type Block, blocks, facts, heading, type ReportSection } from '../blocks.js';
import type { Figures } from '../figures.js';
import type { ReportInput } from '../report-input.js';
import { airBlocks } from './air.js';
import { assemblyBlocks } from './assemblies.js';
import { insideBlocks } from './inside.js';
import { noiseBlocks } from './noise.js';

/** Pictures and figures that the verdict rests on: what comes in and by which way, how it sounds inside, the air, the build-ups. */
export function behindSection({ result }: ReportInput, figures: Figures): ReportSection | undefined {
  const booths = Object.entries(result.booths);
  const blockList = blocks(
    ...booths.flatMap(([name, booth]) => {
      const suffix = ofBooth(name, booths.length);
      return [
        noiseBlocks(name, booth, result, suffix, figures),
        insideBlocks(name, booth, result, suffix, figures),
        airBlocks(name, booth, result, suffix, figures),
      ];
    }),
    assemblyBlocks(result, figures),
    findingsBlocks(result),
  );
  return {
    id: 'behind',
    title: 'What stands behind the verdict',
    lead: 'Where the sound comes in, how it rings, how long the air lasts, what each build-up keeps out.',
    blocks: blockList,
  };
}

const order = { error: 0, warning: 1, information: 2 } as const;

function findingsBlocks({ findings }: ResultDocument): Block[] {
  const sorted: readonly Finding[] = findings.toSorted((a, b) => order[a.severity] - order[b.severity]);
  if (sorted.length === 0) return [];
  return blocks(
    heading('Findings'),
    ...sorted.flatMap(({ message, explanation, fix, source }) => [
      heading(message, 4),
      facts([
        ['Why', explanation],
        ['Fix', fix],
        ['Rests on', source],
      ]),
    ]),
  );
}
