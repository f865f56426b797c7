import type { Assembly, BoothSpec, Material } from '@boothwright/language';
import { textRange } from '../../text/text-range.js';
import type { FactChange } from '../comparison-document.js';
import { differs } from '../smallest-steps.js';
import { alignedLayers } from './aligned-layers.js';
import { entryWord, labelOf } from './labels.js';
import { layerText } from './layer-words.js';
import { isDeclared, isObject, isSourced, rangeOf, signature, tellingProperties } from './leaf.js';
import type { SameThings } from './same-things.js';
import { isBandTable, shownBands, shownPlain, shownValue } from './shown-value.js';
import { summaryOf } from './summary.js';
import { placeOfAssembly } from './uses-of.js';

/** Where in the tree of a spec two values stand. */
interface At {
  readonly place: string;
  readonly what: string;
  /** The property or list above, which tells what a bare `length` is. */
  readonly parent: string;
}

/** Facts of the text that differ, in the order of the new text as far as there is one. */
export function diffFacts(old: BoothSpec, now: BoothSpec, same: SameThings): FactChange[] {
  const differ = new FactDiffer(same);
  differ.pairs(
    [...old.materials.values()].filter(own),
    [...now.materials.values()].filter(own),
    same.materials,
    (material) => `material ${material.name}`,
    'material',
  );
  differ.assemblies(old, now);
  for (const block of ['site', 'session', 'budget'] as const)
    differ.value(old[block], now[block], { place: block, what: '', parent: block });
  for (const list of ['booths', 'measured', 'allowances'] as const)
    differ.value(old[list] ?? [], now[list] ?? [], { place: '', what: '', parent: list });
  return joinedFaces(differ.changes);
}

const own = ({ fromCatalogue }: Material) => !fromCatalogue;

class FactDiffer {
  readonly changes: FactChange[] = [];
  private readonly oldOf: ReadonlyMap<object, object>;

  constructor(private readonly same: SameThings) {
    this.oldOf = new Map<object, object>(
      [...same.materials, ...same.assemblies].map(([before, after]): [object, object] => [after, before]),
    );
  }

  pairs<T extends object>(
    old: readonly T[],
    now: readonly T[],
    matched: ReadonlyMap<T, T>,
    placeOf: (thing: T) => string,
    parent: string,
  ) {
    const met = new Set<T>();
    for (const before of old) {
      const after = matched.get(before);
      if (after !== undefined) met.add(after);
      const place = placeOf(after ?? before);
      if (after === undefined) this.tell(before, undefined, { place, what: '', parent });
      else this.value(before, after, { place, what: '', parent });
    }
    for (const after of now)
      if (!met.has(after) && !this.oldOf.has(after))
        this.tell(undefined, after, { place: placeOf(after), what: '', parent });
  }

  assemblies(old: BoothSpec, now: BoothSpec) {
    const newOnes = [...now.assemblies.values()];
    for (const [before, after] of this.same.assemblies) this.layers(before, after, placeOfAssembly(after, now));
    for (const before of old.assemblies.values())
      if (!this.same.assemblies.has(before))
        this.tell(before, undefined, { place: `assembly ${before.name}`, what: '', parent: 'assembly-itself' });
    for (const after of newOnes)
      if (!this.oldOf.has(after))
        this.tell(undefined, after, { place: `assembly ${after.name}`, what: '', parent: 'assembly-itself' });
  }

  private layers(before: Pick<Assembly, 'layers'>, after: Pick<Assembly, 'layers'>, place: string) {
    for (const { old, now, number } of alignedLayers(before.layers, after.layers, (a, b) => this.isSame(a, b))) {
      const at = { place: `${place}, layer ${number}`, what: '', parent: 'layer' };
      if (old === undefined || now === undefined || old.kind !== now.kind) this.tell(old, now, at);
      else if (old.kind === 'material' && now.kind === 'material') {
        if (!this.isSame(old.material, now.material)) this.tell(old, now, at);
        else if (old.thickness === undefined && now.thickness === undefined)
          this.value(old.surfaceMass, now.surfaceMass, {
            ...at,
            what: `${now.material.name} mass per area`,
            parent: 'surfaceMass',
          });
        else this.value(old.thickness, now.thickness, { ...at, what: now.material.name, parent: 'thickness' });
      } else this.properties(old, now, { ...at, what: now.kind === 'material' ? '' : now.kind });
    }
  }

  /** Anything of the spec against its counterpart. */
  value(old: unknown, now: unknown, at: At): void {
    if (old === undefined && now === undefined) return;
    if (isSourced(old) || isSourced(now)) this.sourced(old, now, at);
    else if (Array.isArray(old) && Array.isArray(now)) this.list(old, now, at);
    else if (!isObject(old) || !isObject(now)) {
      if (signature(old) !== signature(now)) this.tell(old, now, at);
    } else if (this.isKnown(old) || this.isKnown(now)) {
      if (at.parent === 'material' || !this.isSame(old, now)) this.known(old, now, at);
    } else if (isLayer(old) && isLayer(now) && !this.isSame(old.material, now.material)) this.tell(old, now, at);
    else this.properties(old, now, at);
  }

  /** A material or build-up: its own declaration, or a word that names it. */
  private known(old: object, now: object, at: At) {
    if (at.place.startsWith('material ')) this.properties(old, now, at);
    else if (!this.isSame(old, now)) this.tell(old, now, at);
  }

  private properties(old: object, now: object, at: At) {
    const before = new Map(tellingProperties(old));
    const after = new Map(tellingProperties(now));
    for (const property of new Set([...before.keys(), ...after.keys()])) {
      // The mass of a layer follows from its thickness, and its kind is told by its material.
      if (property === 'surfaceMass' && (before.has('thickness') || after.has('thickness')) && 'material' in now)
        continue;
      this.value(before.get(property), after.get(property), this.below(property, now, at));
    }
  }

  private below(property: string, thing: object, at: At): At {
    if (property === 'assembly' || property === 'material') return { ...at, parent: property };
    const { words } = labelOf(at.parent, property);
    const isList = Array.isArray((thing as Record<string, unknown>)[property]);
    return {
      place: at.place,
      what: isList ? at.what : [at.what, words].filter(Boolean).join(' '),
      parent: `${at.parent}.${property}`.split('.').slice(-2).join('.'),
    };
  }

  private sourced(old: unknown, now: unknown, at: At) {
    const declared = [old, now].some((side) => isSourced(side) && isDeclared(side));
    if (!declared || sameValue(old, now)) return;
    this.tell(old, now, at);
  }

  private list(old: readonly unknown[], now: readonly unknown[], at: At) {
    const list = at.parent.split('.').at(-1) as string;
    if (list === 'layers') {
      this.layers({ layers: old as Assembly['layers'] }, { layers: now as Assembly['layers'] }, at.place);
      return;
    }
    if ([...old, ...now].every((entry) => !isObject(entry))) {
      if (signature([...old].sort()) !== signature([...now].sort()))
        this.tell(old, now, { ...at, what: [at.what, list].join(' ').trim() });
      return;
    }
    const before = keyed(old);
    const after = keyed(now);
    // One entry that is left on each side with the same content has a new name and nothing else.
    for (const [key, entry] of before) {
      if (after.has(key)) continue;
      const twin = [...after].find(([other, thing]) => !before.has(other) && signature(thing) === signature(entry));
      if (twin) {
        after.delete(twin[0]);
        before.delete(key);
        this.tell(`${entryWord(list)} ${key}`, `${entryWord(list)} ${twin[0]}`, { ...at, what: 'name' });
      }
    }
    for (const key of new Set([...before.keys(), ...after.keys()])) {
      const place = [at.place, `${entryWord(list)} ${key}`.trim()].filter(Boolean).join(', ');
      const inside = { place, what: '', parent: entryWord(list) };
      const [a, b] = [before.get(key), after.get(key)];
      if (a === undefined || b === undefined) this.tell(a, b, inside);
      else this.value(a, b, inside);
    }
  }

  private tell(old: unknown, now: unknown, { place, what, parent }: At) {
    const [above, property] = parent.includes('.') ? (parent.split('.') as [string, string]) : ['', parent];
    const { unit } = labelOf(above, property);
    const [before, after] = [old, now].map((side) => (side === undefined ? null : this.shown(side, unit, parent)));
    const bands = bandsThatDiffer(old, now, unit);
    this.changes.push({
      place,
      what,
      old: bands?.[0] ?? before ?? null,
      new: bands?.[1] ?? after ?? null,
      oldRange: placeIn(old),
      newRange: placeIn(now),
    });
  }

  private shown(side: unknown, unit: string | undefined, parent: string): string {
    if (isSourced(side)) return shownValue(side, unit);
    if (isObject(side) && 'layers' in side && parent === 'assembly-itself')
      return (side as Assembly).layers.map(layerText).join('; ');
    if (isObject(side) && 'layers' in side && 'name' in side) return (side as Assembly).name;
    if (isObject(side) && this.isKnown(side)) return (side as Material).name;
    if (isObject(side) && 'kind' in side && isLayerLike(side)) return layerText(side);
    return isObject(side) && !Array.isArray(side) ? summaryOf(side) : shownPlain(side, unit);
  }

  private isKnown(thing: object): boolean {
    return 'layers' in thing && 'name' in thing ? true : 'fromCatalogue' in thing;
  }

  /** Whether a thing of the old text is that of the new one. */
  private isSame(old: object, now: object): boolean {
    const found = this.oldOf.get(now);
    return found === undefined
      ? signature(old) === signature(now)
      : found === old || signature(found) === signature(old);
  }
}

function isLayer(thing: object): thing is { readonly material: Material } {
  return 'material' in thing && 'surfaceMass' in thing;
}

function isLayerLike(thing: object): thing is Assembly['layers'][number] {
  return isLayer(thing) || ['air', 'frame'].includes((thing as { kind: string }).kind);
}

/** Entries by name, by the faces they lie on, or by their number. */
function keyed(list: readonly unknown[]): Map<string, unknown> {
  const byKey = new Map<string, unknown>();
  list.forEach((entry, index) => {
    const base = keyOf(entry) ?? String(index + 1);
    let key = base;
    for (let count = 2; byKey.has(key); count++) key = `${base} (${count})`;
    byKey.set(key, entry);
  });
  return byKey;
}

function keyOf(entry: unknown): string | undefined {
  if (!isObject(entry)) return undefined;
  if ('name' in entry) return String(entry.name);
  if ('id' in entry) return String(entry.id);
  return 'faces' in entry && Array.isArray(entry.faces) ? `on ${[...entry.faces].sort().join(', ')}` : undefined;
}

function sameValue(old: unknown, now: unknown): boolean {
  if (!isSourced(old) || !isSourced(now)) return false;
  if ((old.tolerance ?? 0) !== (now.tolerance ?? 0)) return false;
  if (isDeclared(old) !== isDeclared(now)) return false;
  return typeof old.value === 'number' && typeof now.value === 'number'
    ? !differs(old.value, now.value)
    : signature(old.value) === signature(now.value);
}

/** Two tables by band as the bands that differ, where they have the same bands. */
function bandsThatDiffer(old: unknown, now: unknown, unit: string | undefined): [string, string] | undefined {
  if (!isSourced(old) || !isSourced(now) || !isBandTable(old.value) || !isBandTable(now.value)) return undefined;
  const before = new Map(old.value.values.map(({ hz, value }) => [hz, value]));
  const only = new Set(now.value.values.flatMap(({ hz, value }) => (before.get(hz) === value ? [] : [hz])));
  for (const hz of before.keys()) if (!now.value.values.some((band) => band.hz === hz)) only.add(hz);
  return [shownBands(old.value, unit, only), shownBands(now.value, unit, only)];
}

function placeIn(side: unknown) {
  const range = rangeOf(side);
  return range === null ? null : textRange(range);
}

const faceWords: ReadonlySet<string> = new Set(['front', 'back', 'left', 'right', 'roof', 'floor']);

/** The same change of several faces of a booth as one. */
function joinedFaces(changes: readonly FactChange[]): FactChange[] {
  const joined: FactChange[] = [];
  for (const change of changes) {
    const word = change.what.replace(/^faces /, '');
    const isFace = faceWords.has(word);
    const before = joined.at(-1);
    if (
      isFace &&
      before?.place === change.place &&
      before.old === change.old &&
      before.new === change.new &&
      before.what.split(', ').every((one) => faceWords.has(one))
    )
      joined[joined.length - 1] = { ...before, what: `${before.what}, ${word}` };
    else joined.push(isFace ? { ...change, what: word } : change);
  }
  return joined;
}
