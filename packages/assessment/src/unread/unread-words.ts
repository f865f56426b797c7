import type { Unread } from '@boothwright/language';

/** A part of the text with an error, as its writer would name it: `` `assembly shell` ``. */
export function unreadWords({ part, name }: Unread): string {
  if (part === 'outside') return 'a line outside every declaration';
  return name === undefined ? `\`${part}\`` : `\`${part} ${name}\``;
}

/** Why something is not judged: `` `assembly shell` has an error in the text, so ... ``. */
export function unreadSentence(unread: readonly Unread[]): string {
  const [first] = unread;
  if (first === undefined) return '';
  const words = unreadWords(first);
  const others = new Set(unread.map(unreadWords)).size - 1;
  const also = others === 0 ? '' : ` (and ${others} more ${others === 1 ? 'part has' : 'parts have'} one)`;
  return `${words.charAt(0).toUpperCase()}${words.slice(1)} has an error in the text${also}, so this cannot be judged until it is mended: ${first.message}.`;
}
