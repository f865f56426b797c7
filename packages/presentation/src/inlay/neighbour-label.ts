import type { BoothResult } from '@boothwright/assessment';
import { formatQuantity } from '../numbers/format-quantity.js';

/** `hears 21 dBA of your full shout`; undefined without a session or where it is not predicted. */
export function neighbourLabel(neighbour: string, { voiceAt }: BoothResult): string | undefined {
  const session = voiceAt.find(({ place }) => place === neighbour)?.session;
  if (!session?.dBA) return undefined;
  const effort = session.effort.replace('-', ' ');
  const voice = effort.endsWith('shout') ? effort : `${effort} voice`;
  return `hears ${formatQuantity(session.dBA.value, 'dBA')} of your ${voice}`;
}
