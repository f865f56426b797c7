import { bandNumbers, boolean, list, nullable, number, record, ref, string } from './schema-parts.js';

// The part of the JSON Schema that air-result.ts says to the compiler.

const setting = { enum: ['off', 'low', 'high'] } as const;

export function ventilationSchema(): object {
  const flow = record({
    flowM3PerS: { ...nullable(number), description: 'Null where the curve of a fan never meets its path.' },
    neededPa: nullable(number),
    givenPa: nullable(number),
    boothPressurePa: nullable(number),
    gapSpeedMPerS: nullable(number),
    notes: list(string),
  });
  return record({
    way: { enum: ['no-fan', 'no-way-out', 'vents', 'series', 'gaps'] },
    wayNote: string,
    gapAreaM2: number,
    low: nullable(flow),
    high: nullable(flow),
    vents: list(
      record({
        name: string,
        range: ref('range'),
        direction: { enum: ['in', 'out', null] },
        directionStated: boolean,
        opensTo: { enum: ['room', 'outdoors', 'next-room', 'appliance-room'] },
        flowLowM3PerS: nullable(number),
        flowHighM3PerS: nullable(number),
        sections: list(
          record({
            part: { enum: ['duct', 'chamber', 'maze', 'grille'] },
            areaM2: number,
            lowMPerS: nullable(number),
            highMPerS: nullable(number),
          }),
        ),
        pressure: list(record({ part: { enum: ['ends', 'duct', 'bends', 'chambers', 'maze', 'grille'] }, pa: number })),
        sound: list(record({ part: { enum: ['duct', 'bends', 'chambers', 'maze', 'end'] }, lossDb: bandNumbers })),
        soundLossDb: bandNumbers,
      }),
    ),
  });
}

export function airCurveSchema(): object {
  return record({
    fan: { enum: ['on', 'off'] },
    setting,
    flowM3PerS: number,
    minutes: list(number),
    ppm: list(number),
    steadyPpm: nullable(number),
    endPpm: number,
    minutesTo: record({
      '1000': nullable(number),
      '1500': nullable(number),
      '2500': nullable(number),
      '5000': nullable(number),
    }),
  });
}

export function airSchema(): object {
  const curve = ref('airCurve');
  return record({
    volumeM3: number,
    people: number,
    generationM3PerS: number,
    breath: record({
      perPersonM3PerS: number,
      effort: string,
      activityMet: { ...nullable(number), description: 'What the effort is taken for; null where the rate is stated.' },
      lowShare: number,
      highShare: number,
    }),
    supplyPpm: { ...number, description: 'Of the air that the vents bring, at the end of the session.' },
    startPpm: number,
    sessionMinutes: number,
    judged: setting,
    fanOn: nullable(curve),
    fanOff: curve,
    fanLow: nullable(curve),
    fanHigh: nullable(curve),
    ductSpeeds: list(record({ vent: string, mPerS: number })),
    supply: record({
      model: { enum: ['fixed', 'two-zones'] },
      roomVolumeM3: nullable(number),
      roomFreshAirM3PerS: nullable(number),
      roomEndPpm: nullable(number),
      note: string,
    }),
    takes: nullable(
      record({
        takeMinutes: number,
        restMinutes: number,
        fanInTake: { enum: ['on', 'off'] },
        doorExchangeM3PerS: nullable(number),
        takes: { type: 'integer' },
        firstPeakPpm: number,
        lastPeakPpm: number,
        repeatingPeakPpm: nullable(number),
        longestTakeMinutes: record({ '1000': number, '1500': number }),
        note: string,
      }),
    ),
    heat: nullable(
      record({
        gainsW: { ...number, description: 'Dry heat only; heat that leaves as moisture is not in it.' },
        peopleW: number,
        equipmentW: number,
        conductanceWPerK: number,
        airCapacityJPerK: number,
        boardCapacityJPerK: number,
        bySetting: list(
          record({
            setting,
            endRiseK: number,
            steadyRiseK: nullable(number),
            timeConstantMinutes: nullable(number),
            minutes: list(number),
            riseK: list(number),
          }),
        ),
        note: string,
      }),
    ),
    heatNote: nullable(string),
    moisture: nullable(
      record({
        generationKgPerS: number,
        bySetting: list(
          record({
            setting,
            endRelativeHumidity: number,
            endDewPointC: number,
            coldSurfaceMarginK: nullable(number),
          }),
        ),
        note: string,
      }),
    ),
  });
}
