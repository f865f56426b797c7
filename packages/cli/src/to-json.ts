/** JSON with two blanks per level; lists of plain figures stay on one line, so that a spectrum is one line of a diff. */
export function toJson(value: unknown, indent = ''): string {
  if (value === null || typeof value !== 'object') return JSON.stringify(value) ?? 'null';
  const deeper = `${indent}  `;
  if (Array.isArray(value)) {
    if (value.length === 0) return '[]';
    if (value.every((entry) => entry === null || typeof entry !== 'object'))
      return `[${value.map((entry) => toJson(entry)).join(', ')}]`;
    return `[\n${value.map((entry) => deeper + toJson(entry, deeper)).join(',\n')}\n${indent}]`;
  }
  const entries = Object.entries(value).filter(([, entry]) => entry !== undefined);
  if (entries.length === 0) return '{}';
  return `{\n${entries.map(([key, entry]) => `${deeper}${JSON.stringify(key)}: ${toJson(entry, deeper)}`).join(',\n')}\n${indent}}`;
}
