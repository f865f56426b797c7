import type { ReportSection } from '../blocks.js';
import type { Figures } from '../figures.js';

/** The tables behind the pictures, for those who do not see them and those who copy. */
export function figuresSection({ tables }: Figures): ReportSection {
  return {
    id: 'figures',
    title: 'Figures behind the pictures',
    lead: 'One table for each picture, in its order. – is not given or not assessed.',
    blocks: tables,
  };
}
