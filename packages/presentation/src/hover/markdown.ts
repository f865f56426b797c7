/** Text that Markdown shows as it is. */
export function escapeMarkdown(text: string): string {
  return text
    .replace(/[\r\n]+/g, ' ')
    .replace(/[\\`*_{}[\]<>|#~]/g, '\\$&')
    .replace(/&/g, '&amp;');
}

/** A name or a line of a specification in code type. */
export function code(text: string): string {
  const fence = text.includes('`') ? '``' : '`';
  const inner = text.replace(/[\r\n]+/g, ' ').replace(/``+/g, '`');
  return fence === '``' ? `\`\` ${inner} \`\`` : `\`${inner}\``;
}

/** A table; cells are Markdown already. The first column is text, the others are figures. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map((_, index) => (index === 0 ? ':--' : '--:'))), ...rows.map(line)].join('\n');
}

/** A table of words. */
export function textTable(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => ':--')), ...rows.map(line)].join('\n');
}

/** Paragraphs; empty ones are left out. */
export function paragraphs(...parts: readonly (string | undefined | false | null)[]): string {
  return parts.filter((part): part is string => Boolean(part)).join('\n\n');
}

export function bullets(lines: readonly string[]): string {
  return lines.map((line) => `- ${line}`).join('\n');
}

/** `text` as a link where there is an address. */
export function link(text: string, address: string | undefined): string {
  return address ? `[${text}](${address})` : text;
}
