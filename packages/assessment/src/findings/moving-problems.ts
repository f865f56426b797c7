import type { JudgedContext } from '../assessment-context.js';
import type { MovingProblem } from '../result/moving-result.js';
import type { Found } from './found.js';

/** Why each of them matters; the numbers stand in the messages. */
const explanations: Readonly<Record<MovingProblem['id'], string>> = {
  'panel-does-not-go-through':
    'A panel is a stiff board: it passes a door, a lift or a turn only if it fits in one of the ways it can be held. What is not tried is said in the model page.',
  'panel-cannot-be-stood-up':
    'A panel that is raised from the floor needs its diagonal under the ceiling, sqrt(height2 + thickness2).',
  'roof-cannot-go-on':
    'A roof that is put on from above needs its place and room for hands over the booth; one that slides needs its thickness over the walls and floor beside the booth to start from.',
  'booth-too-high': 'It does not stand under what is above it.',
  'booth-outside-the-room': 'It does not stand between the walls of the room.',
  'booth-hits-obstacle': 'Two things cannot stand in one place.',
  'door-cannot-open': 'A door that does not open is no way out, and the leaf needs free floor as wide as itself.',
  'no-order':
    'What is fastened from outside has to be reached from outside, and the last panel from where people stand.',
};

/** What keeps the booth from getting in, up and usable where it is to stand. */
export function movingFindings({ booths }: JudgedContext): Found[] {
  return booths.flatMap(({ booth, result }) =>
    (result.moving?.problems ?? []).map(({ id, text, fix, range }) => ({
      id,
      severity: 'warning' as const,
      range,
      message: `${booth.name}: ${text}`,
      explanation: explanations[id],
      source: `Geometry of stiff boxes; play and reach are common practice. docs/findings/${id}.md`,
      fix: `${fix.charAt(0).toUpperCase()}${fix.slice(1)}.`,
      figures: {},
      related: [],
    })),
  );
}
