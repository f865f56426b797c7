import { type BoothSpec, type Part, parse, type Slot, type Statement } from '@boothwright/language';

/** One change of a variant that writes what the base already says. */
export interface SameAgain {
  readonly path: string;
  readonly value: string;
}

const TITLED = new Set(['name', 'title']);

/** Every path of a text that a variant can change, whole lines and their parts, with what stands there. */
export function everySettable(text: string): readonly SameAgain[] {
  const found: SameAgain[] = [];
  for (const root of parse(text, 'spec.booth').tree.statements) {
    const keyword = root.fact?.keyword ?? '';
    if (keyword === 'let') found.push({ path: nameOf(root)!, value: slice(text, root.slots.get('value')!) });
    else if (['site', 'session', 'budget'].includes(keyword)) inBlock(text, root, keyword, found);
    else if (['booth', 'material'].includes(keyword)) inBlock(text, root, nameOf(root)!, found);
  }
  return found;
}

function inBlock(text: string, owner: Statement, path: string, found: SameAgain[]): void {
  const lines = owner.block?.statements ?? [];
  for (const line of lines) {
    const { fact } = line;
    if (!fact || fact.keyword === 'lining' || fact.keyword === '') continue;
    if (fact.repeats && !fact.declares && lines.filter((other) => other.fact === fact).length > 1) continue;
    const here = `${path}.${fact.declares ? nameOf(line)! : fact.keyword.replace(' ', '.')}`;
    const parts = fact.parts.filter((part) => part.kind !== 'new-name' && part.kind !== 'title');
    const value = header(text, line);
    if (parts.length > 0 && !fact.block?.required) found.push({ path: here, value });
    for (const [from, to] of leftOut(text, line)) {
      const shorter = `${text.slice(startOf(line), from)} ${text.slice(to, endOf(line))}`.replace(/\s+/g, ' ').trim();
      if (shorter !== '') found.push({ path: here, value: shorter });
    }
    if (line.slots.get('value')?.kind === 'price') found.push({ path: here, value: value.replace(/ per .*/, '') });
    for (const [slot, where] of line.slots)
      if (!TITLED.has(slot) && where.kind !== 'flag' && slotNames(parts).has(slot))
        found.push({ path: `${here}.${slot}`, value: slice(text, where) });
    if (line.block) inBlock(text, line, here, found);
  }
}

/** What stands behind the keyword, the name and the title, without the clause that says where a figure is from. */
function header(text: string, line: Statement): string {
  return text.slice(startOf(line), endOf(line)).trim();
}

function startOf(line: Statement): number {
  return Math.max(line.keyword.to, ...['name', 'title'].flatMap((slot) => line.slots.get(slot)?.to ?? []));
}

function endOf(line: Statement): number {
  return line.clause?.from ?? line.headerTo;
}

/** Where the parts stand that the line could do without, each told by a word of its own, such as `sound-power …`. */
function leftOut(text: string, line: Statement): readonly (readonly [from: number, to: number])[] {
  return line.fact!.parts.flatMap((part) => {
    const first = part.kind === 'optional' ? part.parts[0] : undefined;
    const word = first?.kind === 'literal' ? first.word : first?.kind === 'choice' ? first.slot : undefined;
    const start = word === undefined ? undefined : line.slots.get(word);
    if (!start || part.kind !== 'optional') return [];
    const ends = [...slotNames(part.parts)].flatMap((slot) => line.slots.get(slot)?.to ?? []);
    // Where a part is called like the word before it, that word stands outside of it.
    const told =
      start.kind === 'flag' || first!.kind === 'choice' ? start.from : text.lastIndexOf(word!, start.from - 1);
    return [[Math.min(told, ...ends), Math.max(start.to, ...ends)] as const];
  });
}

function slotNames(parts: readonly Part[]): ReadonlySet<string> {
  const names = new Set<string>();
  const walk = (part: Part): void => {
    if (part.kind === 'optional') part.parts.forEach(walk);
    else if (part.kind === 'either') part.branches.flat().forEach(walk);
    else if (part.kind === 'size')
      for (const name of [...part.axes, ...(part.single ? [part.single] : [])]) names.add(name);
    else if (part.kind === 'position') for (const name of part.axes) names.add(name);
    else if ('slot' in part) names.add(part.slot);
  };
  parts.forEach(walk);
  return names;
}

function nameOf(statement: Statement): string | undefined {
  const slot = statement.slots.get('name');
  return slot?.kind === 'word' ? slot.word : undefined;
}

function slice(text: string, { from, to }: Slot): string {
  return text.slice(from, to);
}

const PLACES = new Set([
  'range',
  'nameRange',
  'materialRange',
  'boardRange',
  'origin',
  'text',
  'variants',
  'unread',
  'allowances',
  'measured',
]);

/** A spec without where its values stand in the text and who said them. */
export function valuesOf(spec: BoothSpec): unknown {
  return JSON.parse(
    JSON.stringify(spec, (key, value: unknown) =>
      PLACES.has(key) || /Range$/.test(key) ? undefined : value instanceof Map ? [...value] : value,
    ),
  );
}
