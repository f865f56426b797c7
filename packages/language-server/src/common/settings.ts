/** What a user may switch; the defaults are those of the extension's manifest. */
export interface Settings {
  readonly inlayHints: Readonly<Record<HintKind, boolean>>;
}

export type HintKind =
  | 'assemblies'
  | 'layers'
  | 'openings'
  | 'noise'
  | 'requirements'
  | 'booths'
  | 'inside'
  | 'moving'
  | 'money'
  | 'variants'
  | 'defaults';

export const defaultSettings: Settings = {
  inlayHints: {
    assemblies: true,
    layers: false,
    openings: true,
    noise: true,
    requirements: true,
    booths: true,
    inside: true,
    moving: true,
    money: true,
    variants: true,
    defaults: true,
  },
};

/** Takes what an editor sent under `boothwright`; what is missing or no boolean stays as it is by default. */
export function readSettings(sent: unknown): Settings {
  const hints = property(sent, 'inlayHints');
  const kinds = Object.entries(defaultSettings.inlayHints).map(([kind, byDefault]) => {
    const value = property(hints, kind);
    return [kind, typeof value === 'boolean' ? value : byDefault];
  });
  return { inlayHints: Object.fromEntries(kinds) };
}

function property(value: unknown, name: string): unknown {
  return typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[name] : undefined;
}
