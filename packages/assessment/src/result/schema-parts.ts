// Pieces from which the schema of the result is put together.

export const number = { type: 'number' } as const;
export const string = { type: 'string' } as const;
export const boolean = { type: 'boolean' } as const;
export const nullable = (schema: object) => ({ anyOf: [schema, { type: 'null' }] });
export const list = (items: object) => ({ type: 'array', items });
export const dictionary = (values: object) => ({ type: 'object', additionalProperties: values });
export const ref = (name: string) => ({ $ref: `#/$defs/${name}` });

/** Every key but the optional ones is required and no other is allowed: a key that is missing or new is a mistake. */
export function record(
  properties: Record<string, object>,
  description?: string,
  optional: Readonly<Record<string, object>> = {},
) {
  const schema = {
    type: 'object',
    properties: { ...properties, ...optional },
    required: Object.keys(properties),
    additionalProperties: false,
  };
  return description === undefined ? schema : { ...schema, description };
}

/** Third-octave bands of the grid. */
export const bands = 21;
export const bandNumbers = { type: 'array', items: number, minItems: bands, maxItems: bands } as const;
export const byBand = {
  type: 'array',
  items: { type: ['number', 'null'] },
  minItems: bands,
  maxItems: bands,
} as const;
export const triple = { type: 'array', items: number, minItems: 3, maxItems: 3 } as const;
