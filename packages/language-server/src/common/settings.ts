import type { Severities } from '@boothwright/language';
import { readSeverities } from './severities.js';
import { readShown, type ShownSettings, shownByDefault } from './shown-settings.js';

/** What a user may switch; the defaults are those of the extension's manifest. */
export interface Settings {
  readonly inlayHints: Readonly<Record<HintKind, boolean>>;
  readonly codeLens: Readonly<Record<LensKind, boolean>>;
  readonly show: ShownSettings;
  /** How warnings, findings and missed requirements are told, by identifier. */
  readonly severities: Severities;
}

export type LensKind = 'booths' | 'variants' | 'sinceCommit';

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
  codeLens: { booths: true, variants: true, sinceCommit: true },
  show: shownByDefault,
  severities: {},
};

/** Takes what an editor sent under `boothwright`; what is missing or of no use stays as it is by default. */
export function readSettings(sent: unknown): Settings {
  return {
    inlayHints: switches(property(sent, 'inlayHints'), defaultSettings.inlayHints),
    codeLens: switches(property(sent, 'codeLens'), defaultSettings.codeLens),
    show: readShown(property(sent, 'show')),
    severities: readSeverities(property(sent, 'severities')),
  };
}

function switches<K extends string>(sent: unknown, byDefault: Readonly<Record<K, boolean>>): Record<K, boolean> {
  const read = Object.entries<boolean>(byDefault).map(([kind, preset]) => {
    const value = property(sent, kind);
    return [kind, typeof value === 'boolean' ? value : preset];
  });
  return Object.fromEntries(read) as Record<K, boolean>;
}

function property(value: unknown, name: string): unknown {
  return typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[name] : undefined;
}
