import { describe, expect, it } from 'vitest';
import { createAssessor } from '../src/index.js';
import { specOf } from './fixtures/from-text.js';

// The same questions as a user asks them, from the text on. Every scenario is invented.

const { assess } = createAssessor();

const cellar = `
material board "board" { kind panel; density 650 kg/m3; modulus 3 GPa; poisson 0.3; loss-factor 0.02 }
material slabstock "heavy board" { kind panel; density 1100 kg/m3; modulus 4 GPa; poisson 0.25; loss-factor 0.02 }
material fibre "fibre" { kind porous; density 45 kg/m3; resistivity 14 kPa.s/m2 }
material stud "stud" { kind lumber; density 450 kg/m3 }
let cavity = 90 mm
assembly shell {
  board 18 mm
  frame 45 mm x cavity every 600 mm of stud { fill fibre 80 mm }
  slabstock 12.5 mm
  slabstock 12.5 mm
}
site "cellar" {
  room 4.2 m x 2.8 m x 2.3 m
  reverberation 0.6 s
  noise boiler octave 63 Hz 60 dB, 125 Hz 56 dB, 250 Hz 52 dB, 500 Hz 47 dB, 1 kHz 42 dB, 2 kHz 37 dB, 4 kHz 30 dB
  noise street 55 dBA like road-traffic
  impact steps
  appliance burner open-flued
}
booth box {
  inside 1.30 m x 1.50 m x 1.84 m
  walls shell ; roof shell ; floor shell
  lining on walls { fibre 50 mm }
  door entry on front { size 700 mm x 1700 mm; leaf shell; gap perimeter 0.2 mm; gap threshold 1 mm; swing outward; lock none }
  vent in on left { duct 100 mm x 150 mm; run 1.5 m; lined fibre 25 mm; bends 2; fan 12 L/s }
  vent out on right { duct 100 mm x 150 mm; run 1.5 m; lined fibre 25 mm; bends 2 }
  mic at 0.6 m, 0.7 m, 1.2 m { distance 150 mm; self-noise 6 dBA; high-pass 80 Hz }
}
session { people 1; effort loud; length 60 min; heat 80 W; supply-air 600 ppm }
require room-tone <= 60 dBA
require voice-outside <= 60 dBA
require stc of shell >= 30
variant sealed { box.entry.gap.threshold = 0.2 mm }
variant deep { cavity = 140 mm }
`;

describe('a whole booth from its text', () => {
  const result = assess(specOf(cellar));
  const booth = result.booths.box;

  it('has every path, and shares that add to one in every band', () => {
    expect(booth?.paths.map((path) => path.id)).toContain('vent:in');
    const shares = booth?.noise.bySource[0]?.shares ?? [];
    result.grid.nominalHz.forEach((_, band) => {
      expect(shares.reduce((sum, share) => sum + (share[band] as number), 0)).toBeCloseTo(1, 9);
    });
  });

  it('stops at an open flue beside a fan', () => {
    expect(result.cautions[0]).toMatchObject({ id: 'combustion-appliance', severity: 'stop' });
  });

  it('keeps a room tone open while the fan has no sound power', () => {
    expect(result.requirements[0]?.verdict).toBe('not-assessed');
  });

  it('places findings and verdicts on lines of the text', () => {
    for (const { range } of [...result.findings, ...result.requirements]) {
      expect(range.file).toBe('test.booth');
      expect(cellar.slice(range.from, range.to).length).toBeGreaterThan(0);
    }
    const stc = result.requirements[2];
    expect(cellar.slice(stc?.range.from, stc?.range.to)).toContain('stc of shell');
  });

  it('pronounces nothing fit', () => {
    expect(JSON.stringify(result)).not.toMatch(/\b(safe|compliant|approved)\b/i);
  });

  it('shows that sealing the threshold helps the voice outside and costs nothing', () => {
    const changes = Object.fromEntries(result.variants.sealed?.changes.map((change) => [change.what, change]) ?? []);
    expect(changes['box: voice outside']?.variant).toBeLessThan(changes['box: voice outside']?.base as number);
    expect(changes['box: mass']).toBeUndefined();
  });

  it('shows that a deeper cavity lowers the resonance', () => {
    const change = result.variants.deep?.changes.find((entry) => entry.what === 'shell: lowest resonance');
    expect(change?.variant).toBeLessThan(change?.base as number);
  });
});

describe('an edit of one line', () => {
  it('computes walls again only where a wall changed', () => {
    const assessor = createAssessor();
    const base = cellar.replace(/^variant .*$/gm, '');
    assessor.assess(specOf(base));
    const before = assessor.memo.computedByKind;
    assessor.assess(specOf(base.replace('gap threshold 1 mm', 'gap threshold 2 mm')));
    const after = assessor.memo.computedByKind;
    // A new slit and the closed box with it, also in the trials of fixes; no wall and no absorption.
    expect(after.slit).toBeGreaterThan(before.slit ?? 0);
    expect({ tl: after.tl, absorption: after.absorption }).toEqual({ tl: before.tl, absorption: before.absorption });
    assessor.assess(specOf(base.replace('<= 60 dBA', '<= 50 dBA')));
    expect(assessor.memo.computedByKind).toEqual(after);
  });
});

describe('a wall alone', () => {
  it('is assessed without booth, site and session', () => {
    const result = assess(
      specOf(`
material sheet { kind limp; density 1500 kg/m3 }
assembly wall { sheet 4.9 kg/m2; air 6 mm; sheet 3 kg/m2 }
require stc of wall >= 30
require mass <= 100 kg
`),
    );
    expect(result.booths).toEqual({});
    expect(result.requirements.map((entry) => entry.verdict)).toEqual(['missed', 'not-assessed']);
    expect(result.findings.map((finding) => finding.id)).toContain('cavity-resonance-in-band');
  });
});
