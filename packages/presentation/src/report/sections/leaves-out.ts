import { blocks, heading, list, type ReportSection } from '../blocks.js';
import type { ReportInput } from '../report-input.js';

/** What the prediction does not know. */
export function leavesOutSection({ result }: ReportInput): ReportSection {
  const booths = Object.values(result.booths);
  const later = [
    ...new Set(
      booths.flatMap(({ moving, reflections }) => [...(moving?.leavesOut ?? []), ...(reflections?.leavesOut ?? [])]),
    ),
  ];
  return {
    id: 'leaves-out',
    title: 'What the prediction leaves out',
    lead: 'Known to be missing from the figures above.',
    blocks: blocks(list(result.leavesOut), later.length > 0 && heading('Of reflections and moving'), list(later)),
  };
}
