import { type Fact, type Part, partText, shapeText } from '@boothwright/language';

/** One thing that the user fills in, where it stands in the shape of the line. */
export interface Parameter {
  readonly from: number;
  readonly to: number;
  /** The slots that it fills. */
  readonly slots: readonly string[];
  readonly part: Part;
  /** The fixed word that leads to it, such as `limit` in `floor timber limit 1.5 kPa`. */
  readonly after: string | undefined;
}

/** The parameters of a line in the order of its shape, those of parts that may be left out among them. */
export function parametersOf(fact: Fact): readonly Parameter[] {
  const shape = shapeText(fact);
  const found: Parameter[] = [];
  let at = fact.keyword.length;
  let after: string | undefined;
  const take = (text: string, slots: readonly string[], part: Part): void => {
    const from = shape.indexOf(text, at);
    if (from < 0 || text === '') return;
    at = from + text.length;
    found.push({ from, to: at, slots, part, after });
    after = undefined;
  };
  const visit = (part: Part): void => {
    switch (part.kind) {
      case 'literal':
        at = Math.max(at, shape.indexOf(part.word, at) + part.word.length);
        after = part.word;
        return;
      case 'optional':
        for (const inner of part.parts) visit(inner);
        return;
      case 'either':
        for (const branch of part.branches) for (const inner of branch) visit(inner);
        return;
      case 'size':
      case 'position':
        for (const axis of part.axes) take(axis.toUpperCase(), [axis], part);
        if (part.kind === 'size' && part.single !== undefined) take(part.single.toUpperCase(), [part.single], part);
        return;
      default:
        take(partText(part), slotsOf(part), part);
    }
  };
  for (const part of fact.parts) visit(part);
  return found;
}

function slotsOf(part: Part): readonly string[] {
  if (part.kind === 'new-name') return ['name'];
  if (part.kind === 'title') return ['title'];
  return 'slot' in part ? [part.slot] : [];
}
