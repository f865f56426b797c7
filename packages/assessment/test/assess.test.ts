import { type BoothSpec, checkSpec } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { generatedSpec } from '../../../tests/bench/latency/generated-spec.js';
import { assess, createAssessor } from '../src/index.js';
import { entriesOf } from '../src/memo/entries-of.js';
import {
  assembly,
  booth,
  frame,
  given,
  gypsum,
  place,
  plywood,
  quietFan,
  roomTone,
  sheet,
  shell,
  spec,
  vent,
} from './fixtures/spec-builder.js';

const whole = (): BoothSpec =>
  spec({
    booths: [booth(shell, { vents: [vent('intake', { fan: quietFan }), vent('exhaust')] })],
    requirements: [roomTone(20, 'A')],
  });

describe('assess(spec)', () => {
  it('gives the same document for the same spec', () => {
    const base = whole();
    expect(JSON.stringify(assess(base))).toBe(JSON.stringify(assess(base)));
  });

  it('gives the same document from a fresh and from a used assessor', () => {
    const base = whole();
    const used = createAssessor();
    used.assess(spec({ booths: [] }));
    used.assess(base);
    expect(JSON.stringify(used.assess(base))).toBe(JSON.stringify(assess(base)));
  });

  it('tells the build-ups before the booths, as they stand in the document', () => {
    const told: unknown[] = [];
    const found = createAssessor().assess(whole(), { assemblies: (assemblies) => told.push(assemblies) });
    expect(told).toEqual([found.assemblies]);
  });

  it('tells the whole of the spec itself before its variants, and nothing where there are none', () => {
    const told: unknown[] = [];
    const base = (found: unknown) => told.push(found);
    const {
      variants: _,
      allowances: __,
      ...own
    } = createAssessor().assess(
      {
        ...whole(),
        variants: [{ name: 'bare', spec: spec({ booths: [] }), range: place(), nameRange: place(), written: [] }],
      },
      { base },
    );
    expect(told).toEqual([own]);
    createAssessor().assess(whole(), { base });
    expect(told).toHaveLength(1);
  });

  it('can be ended at any step, and then gives the same document as ever', () => {
    const base = whole();
    const assessor = createAssessor();
    let steps = 0;
    const document = JSON.stringify(assess(base));
    expect(JSON.stringify(createAssessor().assess(base, { step: () => steps++ }))).toBe(document);
    for (const last of [0, 1, Math.floor(steps / 2), steps - 1]) {
      let left = last;
      const step = () => {
        if (left-- === 0) throw new Error('ended');
      };
      expect(() => assessor.assess(base, { step })).toThrow('ended');
    }
    expect(JSON.stringify(assessor.assess(base))).toBe(document);
  });

  it('remembers all of a spec of forty build-ups and three booths', () => {
    const base = checkSpec('a.booth', { read: () => ({ kind: 'text', text: generatedSpec(1).text }) }).spec;
    const assessor = createAssessor();
    assessor.assess(base);
    const { computed } = assessor.memo;
    assessor.assess(structuredClone(base));
    expect(assessor.memo.computed).toBe(computed);
    expect(assessor.memo.size).toBeLessThan(entriesOf(base));
  });

  it('does not change the spec', () => {
    const base = whole();
    const before = JSON.stringify(base);
    assess(base);
    expect(JSON.stringify(base)).toBe(before);
  });

  it('survives a text with nothing in it', () => {
    const document = assess(spec({ walls: [], booths: [], site: undefined, session: undefined }));
    expect(document.assemblies).toEqual({});
    expect(document.booths).toEqual({});
    expect(document.leavesOut.length).toBeGreaterThan(3);
  });

  it('has no NaN and no infinity anywhere', () => {
    const look = (node: unknown): void => {
      if (typeof node === 'number') expect(Number.isFinite(node)).toBe(true);
      else if (typeof node === 'object' && node !== null) Object.values(node).forEach(look);
    };
    look(assess(whole()));
  });
});

describe('createAssessor()', () => {
  it('computes nothing again when nothing physical changed', () => {
    const assessor = createAssessor();
    assessor.assess(whole());
    const before = assessor.memo.computed;
    const base = whole();
    assessor.assess({ ...base, requirements: [roomTone(25, 'A')] });
    expect(assessor.memo.computed).toBe(before);
  });

  it('computes only what depends on an edited line', () => {
    const assessor = createAssessor();
    const base = whole();
    assessor.assess(base);
    const before = assessor.memo.computedByKind;
    const alcove = base.booths[0] as (typeof base.booths)[0];
    const edited = { ...alcove, doors: alcove.doors.map((door) => ({ ...door, thresholdGap: given(2e-3) })) };
    assessor.assess({ ...base, booths: [edited] });
    const after = assessor.memo.computedByKind;
    // The new slit and the closed box with it, also in the trials of fixes; no wall and no absorption.
    expect(after.slit).toBeGreaterThan(before.slit ?? 0);
    expect({ tl: after.tl, absorption: after.absorption }).toEqual({ tl: before.tl, absorption: before.absorption });
  });

  it('keeps to its bounds', () => {
    const assessor = createAssessor();
    for (let index = 0; index < 20; index += 1) {
      const wall = assembly('wall', sheet(plywood, 0.01 + index * 1e-4), frame(0.07), sheet(gypsum, 0.0125));
      assessor.assess(spec({ walls: [wall], booths: [] }));
    }
    expect(assessor.memo.size).toBeLessThanOrEqual(2000);
  });
});
