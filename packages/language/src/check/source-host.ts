/** How the language reads other files; paths are POSIX and relative to the workspace folder. Synchronous. */
export interface SourceHost {
  read(path: string): SourceAnswer;
}

export type SourceAnswer =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'missing' }
  | { readonly kind: 'refused'; readonly reason: string }
  | { readonly kind: 'unreadable'; readonly reason: string };
