import type { JudgedContext } from '../assessment-context.js';
import type { MovingProblem } from '../result/moving-result.js';
import type { Found } from './found.js';

/** Why each of them matters; the numbers stand in the messages. */
const kinds: readonly { readonly id: MovingProblem['id']; readonly page: string; readonly why: string }[] = [
  {
    id: 'panel-does-not-go-through',
    page: 'docs/findings/panel-does-not-go-through.md',
    why: 'A panel is a stiff board: it passes a door, a lift or a turn only if it fits in one of the ways it can be held. What is not tried is said in the model page.',
  },
  {
    id: 'panel-cannot-be-stood-up',
    page: 'docs/findings/panel-cannot-be-stood-up.md',
    why: 'A panel that is raised from the floor needs its diagonal under the ceiling, sqrt(height2 + thickness2).',
  },
  {
    id: 'roof-cannot-go-on',
    page: 'docs/findings/roof-cannot-go-on.md',
    why: 'A roof that is put on from above needs its place and room for hands over the booth; one that slides needs its thickness over the walls and floor beside the booth to start from.',
  },
  { id: 'booth-too-high', page: 'docs/findings/booth-too-high.md', why: 'It does not stand under what is above it.' },
  {
    id: 'booth-outside-the-room',
    page: 'docs/findings/booth-outside-the-room.md',
    why: 'It does not stand between the walls of the room.',
  },
  {
    id: 'booth-hits-obstacle',
    page: 'docs/findings/booth-hits-obstacle.md',
    why: 'Two things cannot stand in one place.',
  },
  {
    id: 'door-cannot-open',
    page: 'docs/findings/door-cannot-open.md',
    why: 'A door that does not open is no way out, and the leaf needs free floor as wide as itself.',
  },
  {
    id: 'no-order',
    page: 'docs/findings/no-order.md',
    why: 'What is fastened from outside has to be reached from outside, and the last panel from where people stand.',
  },
];

/** What keeps the booth from getting in, up and usable where it is to stand. */
export function movingFindings({ booths }: JudgedContext): Found[] {
  return booths.flatMap(({ booth, result }) =>
    kindsOf(result.moving?.problems ?? []).map(({ kind, text, fix, range }) => ({
      id: kind.id,
      severity: 'warning' as const,
      range,
      message: `${booth.name}: ${text}`,
      explanation: kind.why,
      source: `Geometry of stiff boxes; play and reach are common practice. ${kind.page}`,
      fix: `${fix.charAt(0).toUpperCase()}${fix.slice(1)}.`,
      figures: {},
      related: [],
    })),
  );
}

function kindsOf(problems: readonly MovingProblem[]) {
  return problems.flatMap((problem) =>
    kinds.filter(({ id }) => id === problem.id).map((kind) => ({ ...problem, kind })),
  );
}
