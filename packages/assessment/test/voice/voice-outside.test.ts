import { airProperties, sabineConstant, speechSpectrum, weightedTotal } from '@boothwright/acoustics';
import type { Effort } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { perBand } from '../../src/bands/grid.js';
import { bandModelsOf } from '../../src/booth/band-models.js';
import { pathsOf } from '../../src/booth/paths.js';
import { createMemo } from '../../src/memo/memo.js';
import { voiceOutside } from '../../src/voice/voice-outside.js';
import { voiceTransfer } from '../../src/voice/voice-transfer.js';
import { booth, given, session, site } from '../fixtures/spec-builder.js';

const air = airProperties({ temperature: 20, relativeHumidity: 0.5 });
const paths = pathsOf(booth(), air, createMemo());
const shares = paths.map(() => perBand(() => 1 / paths.length));
const models = bandModelsOf(60, 86, 300);
const roomArea = (sabineConstant(air) * 3.6 * 3.1 * 2.45) / 0.5;
const transfer = (area: number) =>
  voiceTransfer(
    paths,
    perBand(() => area),
    shares,
    models,
    roomArea,
  );
const at = (area: number, talk = session()) => voiceOutside(transfer(area), site(), talk);

describe('voiceOutside(paths, absorption, ...)', () => {
  it('is the power that passes the shell, spread over the room', () => {
    const passed = paths.reduce(
      (sum, { result }) => sum + result.areaM2 * 10 ** (-(result.transmissionLossDb[13] as number) / 10),
      0,
    );
    const speech = speechSpectrum('normal')[13] as number;
    expect(at(5)?.byBand[13]).toBeCloseTo(speech + 11 + 10 * Math.log10(passed / 5) + 10 * Math.log10(4 / roomArea), 9);
  });

  it('falls by 3 dB when the inside absorbs twice as much', () => {
    expect((at(5)?.byBand[13] as number) - (at(10)?.byBand[13] as number)).toBeCloseTo(3.01, 2);
  });

  it('leaves the bands unknown in which the speech spectrum is', () => {
    expect(at(5)?.byBand.slice(0, 5)).toEqual([null, null, null, null, null]);
    expect(at(5)?.note).toContain('160 Hz');
  });

  it('rises with the effort', () => {
    const shout = at(5, session({ effort: given<'shout'>('shout') }));
    expect(shout?.dBA?.value).toBeGreaterThan((at(5)?.dBA?.value as number) + 15);
  });

  it('has no answer without the size of the room or without a session', () => {
    expect(voiceOutside(null, site({ room: undefined }), session())).toBeNull();
    expect(voiceOutside(transfer(5), site(), undefined)).toBeNull();
  });
});

it('voiceOutside(...) says in its note where the voice comes from', () => {
  expect(at(5)?.note).toContain('ANSI S3.5-1997 Table 3, standard speech spectrum');
  expect(at(5, session({ effort: given<Effort>('casual') }))?.note).toContain('from memory');
});

it('voiceOutside(...) takes a shout as the full shout of a performer, 89 dBA at 1 m', () => {
  const standard = speechSpectrum('shout');
  const shout = at(5, session({ effort: given<Effort>('shout') }));
  const normal = at(5);
  const reading = weightedTotal(standard, 'A') as number;
  const expected = (standard[13] as number) - (speechSpectrum('normal')[13] as number) + (89 - reading);
  expect((shout?.byBand[13] as number) - (normal?.byBand[13] as number)).toBeCloseTo(expected, 9);
  expect(shout?.note).toContain('from memory');
});
