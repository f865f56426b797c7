import { list, nullable, number, record, ref, string, triple } from './schema-parts.js';

/** Of `BoothResult.roomSound`; null for a booth with an open face. */
export const roomSoundSchema = nullable(
  record(
    {
      range: ref('range'),
      decay: list(
        record(
          {
            hz: number,
            seconds: nullable(number),
            lowS: nullable(number),
            highS: nullable(number),
            method: { enum: ['modes', 'statistical', 'both', 'dry', 'none'] },
            note: string,
          },
          'Decay by 60 dB of a third-octave band, from the mouth to the microphone.',
        ),
      ),
      mid: nullable(record({ seconds: number, lowS: number, highS: number }, 'Mean of 500 Hz to 2 kHz.')),
      ratio125: nullable(number),
      ratio250: nullable(number),
      modes: list(
        record({
          hz: number,
          order: { ...triple, items: { type: 'integer' } },
          decayS: nullable(number),
          lowS: nullable(number),
          highS: nullable(number),
          onVoice: list({ enum: ['low-voice', 'high-voice'] }),
        }),
      ),
      clusters: list(record({ fromHz: number, toHz: number, count: { type: 'integer' } })),
      gaps: list(record({ fromHz: number, toHz: number })),
      airM: triple,
      assumes: list(string),
    },
    'How the booth sounds inside.',
  ),
);
