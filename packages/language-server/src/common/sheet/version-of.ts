/** A short name for a text, FNV-1a over its letters; two texts of one fold that share it by chance are one in four thousand million. */
export function versionOf(text: string): string {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return (hash >>> 0).toString(36);
}
