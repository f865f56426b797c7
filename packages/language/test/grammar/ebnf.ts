/** A rule of the grammar page. */
export type Rule =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'row' | 'choice'; readonly items: readonly Rule[] }
  | { readonly kind: 'option' | 'repeat'; readonly item: Rule };

/** Words of the page that are said in prose, not by a rule. */
export const PROSE = ['any character but a quote or a line end', 'any character but a line end'] as const;

/** The rules of an EBNF text by name; throws where it cannot be read, since the page would then be wrong. */
export function readEbnf(text: string): ReadonlyMap<string, Rule> {
  const tokens = [
    ...text
      .replace(/\(\*.*?\*\)/gs, ' ')
      .matchAll(/"[^"]*"|'[^']*'|[a-z]+(?: (?:character|but|a|or|quote|line|end)\b)*|[=|;(){}[\]]/g),
  ].map(([token]) => token);
  const rules = new Map<string, Rule>();
  let at = 0;
  const take = (wanted?: string): string => {
    const token = tokens[at++];
    if (token === undefined || (wanted !== undefined && token !== wanted))
      throw new Error(
        `expected ${wanted ?? 'more'}, found ${token ?? 'the end'} at token ${at} (${tokens.slice(at - 6, at).join(' ')})`,
      );
    return token;
  };
  const choice = (): Rule => {
    const items = [row()];
    while (tokens[at] === '|') {
      at++;
      items.push(row());
    }
    return items.length === 1 ? items[0]! : { kind: 'choice', items };
  };
  const row = (): Rule => {
    const items: Rule[] = [];
    while (tokens[at] !== undefined && !['|', ';', ')', '}', ']'].includes(tokens[at]!)) items.push(one());
    return items.length === 1 ? items[0]! : { kind: 'row', items };
  };
  const one = (): Rule => {
    const token = take();
    if (token === '(') return closed(')', (item) => item);
    if (token === '[') return closed(']', (item) => ({ kind: 'option', item }));
    if (token === '{') return closed('}', (item) => ({ kind: 'repeat', item }));
    return /^["']/.test(token) ? { kind: 'text', text: token.slice(1, -1) } : { kind: 'name', name: token };
  };
  const closed = (sign: string, make: (item: Rule) => Rule): Rule => {
    const item = choice();
    take(sign);
    return make(item);
  };
  while (at < tokens.length) {
    const name = take();
    take('=');
    if (rules.has(name)) throw new Error(`the rule ${name} stands twice`);
    rules.set(name, choice());
    take(';');
  }
  return rules;
}

/** Names that a rule uses. */
export function namesIn(rule: Rule): readonly string[] {
  if (rule.kind === 'name') return [rule.name];
  if (rule.kind === 'text') return [];
  return 'items' in rule ? rule.items.flatMap(namesIn) : namesIn(rule.item);
}
