import { checkSpec } from '@boothwright/language';
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/index.js';
import { cautionsById, findingsById, onlyBooth } from '../fixtures/assessed.js';
import { smallBooth } from '../fixtures/booth-text.js';

type Lines = Parameters<typeof smallBooth>[0];
const airOf = (lines: Lines) => {
  const { air } = onlyBooth(smallBooth(lines));
  if (air === null) throw new Error('no air');
  return air;
};
const fan = (words: string, duct = '125 mm; run 1 m') =>
  `vent in on left { duct ${duct}; ${words} }; vent out on right { duct ${duct} }`;

describe('a fan whose air cannot pass', () => {
  const held = { vents: fan('fan supply 10 L/s { curve 5 L/s 1 Pa, 20 L/s 0 Pa }', '50 mm; run 8 m; bends 6') };
  const oneWay = {
    vents:
      'vent in on left { duct 125 mm; run 1 m; fan supply 10 L/s }; vent out on right { duct 125 mm; run 1 m; fan supply 10 L/s }',
  };

  it('is told as held back where its curve never meets its path, not as no fan at all', () => {
    const [finding] = findingsById(smallBooth(held), 'no-fresh-air');
    expect(finding?.message).toContain('has a fan that its air path holds back');
    expect(finding?.fix).toContain('a fan with more pressure');
    expect(cautionsById(smallBooth(held), 'no-fan')[0]?.hazard).toContain('does not get air through its path');
    expect(findingsById(smallBooth(held), 'fan-too-weak')[0]?.message).toContain('never meets');
  });

  it('is told as blowing one way where all fans do', () => {
    const [finding] = findingsById(smallBooth(oneWay), 'no-fresh-air');
    expect(finding?.message).toContain('fans that all blow the same way');
    expect(finding?.fix).toContain('Turn one of the fans round');
    expect(cautionsById(smallBooth(oneWay), 'no-fan')[0]?.hazard).toContain('all blow the same way');
    expect(onlyBooth(smallBooth(oneWay)).ventilation.wayNote).toContain('All fans blow the same way');
  });

  it('leaves everything else assessed', () => {
    for (const lines of [held, oneWay]) {
      const spec = smallBooth({
        ...lines,
        requirements: 'require room-tone <= NC 60; require co2 <= 1000 ppm; require height <= 3 m',
      });
      const { requirements, booths } = assess(spec);
      const { air, noise, voiceAt } = Object.values(booths)[0]!;
      expect(requirements.map(({ kind, verdict }) => `${kind} ${verdict}`)).toContain('height met');
      expect(air?.fanOff.endPpm).toBeGreaterThan(5000);
      expect(noise.total.dBA).not.toBeNull();
      expect(voiceAt.length).toBeGreaterThan(0);
    }
  });
});

describe('numbers that are odd and legal', () => {
  it('0.1 L/s change next to nothing, 200 L/s leave the air of the room', () => {
    const [little, much] = ['0.1 L/s', '200 L/s'].map((flow) => airOf({ vents: fan(`fan supply ${flow}`) }));
    expect(little!.fanOn!.endPpm).toBeLessThan(little!.fanOff.endPpm);
    expect(little!.fanOn!.endPpm).toBeGreaterThan(0.9 * little!.fanOff.endPpm);
    // 600 ppm and 20 L/h in 200 L/s: 27.8 ppm more.
    expect(much!.fanOn!.endPpm).toBeCloseTo(627.8, 1);
    const rise = much!.heat!.bySetting.find(({ setting }) => setting === 'high')!;
    // 90 W/(1.2 x 1005 x 0.2 + UA) is well below 0.4 K.
    expect(rise.endRiseK).toBeLessThan(0.4);
    expect(rise.timeConstantMinutes).toBeGreaterThan(0);
  });

  it('five people in a closed booth warm its air to that of their skin and no further, machines do', () => {
    const crowded = smallBooth({ session: 'fan off' });
    const five = { ...crowded.session!, people: { ...crowded.session!.people, value: 5 } };
    const crowd = onlyBooth({ ...crowded, session: five }).air!;
    const off = crowd.heat!.bySetting.find(({ setting }) => setting === 'off')!;
    // The room has 20 degC, skin 34 degC.
    expect(off.endRiseK).toBe(14);
    expect(Math.max(...off.riseK)).toBe(14);
    expect(crowd.heat!.note).toContain('Held at 34 °C');
    const one = airOf({ session: 'fan off' });
    expect(one.heat!.note).not.toContain('Held');
    const stove = airOf({ session: 'fan off; heat 2000 W' });
    const hot = stove.heat!.bySetting.find(({ setting }) => setting === 'off')!.endRiseK;
    expect(hot).toBeGreaterThan(60);
  });

  it('a crowd in a room without air does not start in air that nobody can breathe', () => {
    // Five times 20 L/h in 0.1 L/s would be 278 000 ppm.
    const airless = airOf({ site: 'room 4 m x 3.6 m x 2.5 m; fresh-air 0.1 L/s; occupants 5' });
    expect(airless.startPpm).toBe(5000);
    expect(airless.fanOn!.endPpm).toBeLessThan(20000);
    expect(airless.fanOn!.endPpm).toBeGreaterThan(5000);
    // Two in 6 L/s: 420 + 1852 ppm, as before.
    expect(airOf({ site: 'room 4 m x 3.6 m x 2.5 m; fresh-air 6 L/s; occupants 2' }).startPpm).toBeCloseTo(2271.9, 0);
  });

  it('takes are run as the session has the fan: off in the session is off in its takes', () => {
    const cycle = 'take 20 min rest 5 min';
    expect(airOf({ session: `fan off; ${cycle}` }).takes?.fanInTake).toBe('off');
    expect(airOf({ session: cycle }).takes?.fanInTake).toBe('on');
    expect(airOf({ session: `fan off; ${cycle}` }).takes?.lastPeakPpm).toBe(
      airOf({ session: `${cycle} fan off` }).takes?.lastPeakPpm,
    );
  });

  it('what is recorded with the fan off is heard with the fan off', () => {
    const power = 'fan supply 10 L/s sound-power octave 63 Hz 60 dB, 125 Hz 60 dB, 250 Hz 60 dB, 500 Hz 60 dB';
    const heard = (session: string) => onlyBooth(smallBooth({ vents: fan(power), session })).noise;
    expect(heard('take 20 min rest 5 min').fan).not.toBeNull();
    expect(heard('take 20 min rest 5 min fan off').fan).toBeNull();
    expect(heard('take 20 min rest 5 min fan off').bySetting.find(({ session }) => session)?.setting).toBe('off');
  });
});

describe('what the text of the air gets wrong', () => {
  const text = (people: string, vents: string) => `use catalog
assembly shell { softwood-plywood 12 mm; frame 45 mm x 70 mm every 600 mm; gypsum-board 12.5 mm }
site "room" { noise street 55 dBA like road-traffic; room 4 m x 3.6 m x 2.5 m }
booth small {
  inside 1.2 m x 1.4 m x 2.0 m; walls shell; roof shell; floor shell
  ${vents}
}
session { people ${people}; length 60 min }
require co2 <= 1000 ppm
require height <= 2.5 m
`;
  const two = 'vent in on left { duct 125 mm; run 1 m; fan supply 10 L/s }; vent out on right { duct 125 mm; run 1 m }';
  const checked = (wrong: string) => {
    const { spec, problems } = checkSpec('test.booth', { read: () => ({ kind: 'text', text: wrong }) });
    const errors = problems.filter(({ severity }) => severity === 'error');
    return { errors, at: errors.map(({ range }) => wrong.slice(range.from, range.to)), result: assess(spec) };
  };

  it.each([
    ['nobody inside', text('0', two), 'at least 1', '0'],
    [
      'a vent without a path',
      text('1', two.replace('duct 125 mm; run 1 m; fan', 'fan')),
      'vent in has no `duct` and `run`',
      'vent in on left',
    ],
    ['a fan that moves nothing', text('1', two.replace('10 L/s', '0 L/s')), 'more than zero', '0 L/s'],
    [
      'a fan curve that runs backwards',
      text('1', two.replace('10 L/s', '10 L/s { curve 20 L/s 80 Pa, 10 L/s 120 Pa }')),
      'the flows of a fan curve rise',
      '10 L/s',
    ],
  ])('%s is told at its place, and the rest is assessed', (_, wrong, message, place) => {
    const { errors, at, result } = checked(wrong);
    expect(errors.map((error) => error.message).join()).toContain(message);
    expect(at).toEqual([place]);
    const { noise, voiceAt, geometry } = result.booths.small!;
    expect(noise.total.dBA?.value).toBeGreaterThan(10);
    expect(voiceAt.length).toBeGreaterThan(0);
    expect(geometry.insideM).toEqual([1.2, 1.4, 2]);
    // Nothing of the air is passed off as judged.
    expect(result.requirements.find(({ kind }) => kind === 'co2')?.verdict).toBe('not-assessed');
  });
});
