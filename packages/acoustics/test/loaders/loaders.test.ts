import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type LoadedTable,
  loadAbsorptionCsv,
  loadAbsorptionJson,
  loadTransmissionLossCsv,
  loadTransmissionLossJson,
  rowsOrThrow,
  TableError,
} from '../../src/loaders/index.js';

const errors = (table: LoadedTable) => table.problems.filter((p) => p.severity === 'error').map((p) => p.message);
const valuesOf = (table: LoadedTable, row = 0) => table.rows[row]!.values.map(({ hz, value }) => [hz, value]);

describe('loadAbsorptionCsv(text)', () => {
  it('reads a plain table, bands in any writing and order, other columns as text', () => {
    const table = loadAbsorptionCsv('\uFEFFid,name,1k,125 Hz,250,maker\r\na,"wool, soft",0.9,0.2,0.5,nobody\r\n');
    expect(table.problems).toEqual([]);
    expect(table.rows[0]).toMatchObject({ id: 'a', name: 'wool, soft', row: 2, other: { maker: 'nobody' } });
    expect(valuesOf(table)).toEqual([
      [125, 0.2],
      [250, 0.5],
      [1000, 0.9],
    ]);
  });

  it('reads decimal commas that can be nothing else, and refuses those that can', () => {
    const table = loadAbsorptionCsv('id;125;250;500;1000\na;0,125;,5;1,2;1,050');
    expect(valuesOf(table)).toEqual([
      [125, 0.125],
      [250, 0.5],
      [500, 1.2],
      [1000, null],
    ]);
    expect(errors(table)).toEqual([
      "row 2, column 1000: value is 1,050, expected a coefficient from 0 to 1.5, or a number with a percent sign, with a point or with a comma that can't be one of thousands",
    ]);
    expect(table.rows[0]!.values[3]!.text).toBe('1,050');
  });

  it('reads percent by cell and by column, and says so', () => {
    const table = loadAbsorptionCsv('id,125 Hz (%),250\na,20,45 %');
    expect(valuesOf(table)).toEqual([
      [125, 0.2],
      [250, 0.45],
    ]);
    expect(table.problems.map((p) => p.message)).toEqual(['row 2, column 250: 45 % read as 0.45 (percent)']);
    expect(rowsOrThrow(table)).toHaveLength(1);
  });

  it('takes missing cells as nothing known, never as 0', () => {
    const table = loadAbsorptionCsv('id,125,250,500\na,,n/a,0.5');
    expect(valuesOf(table)).toEqual([
      [125, null],
      [250, null],
      [500, 0.5],
    ]);
    expect(errors(table)).toEqual([]);
    expect(table.problems).toHaveLength(2);
  });

  it('keeps unknown bands as text and names the column once', () => {
    const table = loadAbsorptionCsv('id,125,130 Hz\na,0.1,0.2\nb,0.1,0.3');
    expect(errors(table)).toEqual([
      'column 130 Hz: a frequency that is no nominal band, expected each third-octave or octave centre once; kept as text',
    ]);
    expect(table.rows.map((row) => row.other['130 Hz'])).toEqual(['0.2', '0.3']);
  });

  it('keeps rows with the same id and names both', () => {
    const table = loadAbsorptionCsv('id,125\na,0.1\na,0.2');
    expect(table.rows).toHaveLength(2);
    expect(errors(table)).toEqual([
      'row 3, column id: a is the id of row 2 too, expected a different one; both are kept',
    ]);
  });

  it('names row and column of values that cannot be', () => {
    const table = loadAbsorptionCsv('id,125,250\na,45,-0.1\n,x,0.1');
    expect(errors(table)).toEqual([
      'row 2, column 125: value is 45, expected a coefficient from 0 to 1.5, or a number with a percent sign',
      'row 2, column 250: value is -0.1, expected a coefficient from 0 to 1.5, or a number with a percent sign',
      'row 3, column 125: value is x, expected a coefficient from 0 to 1.5, or a number with a percent sign',
      'row 3: no id or name, expected a column id or name with a text',
    ]);
    expect(table.rows[1]!.id).toBe('row 3');
  });

  it('tells rows that are too short or too long, and keeps their cells', () => {
    const table = loadAbsorptionCsv('id,125,250\na,0.1\nb,0.1,0.2,0.3');
    expect(errors(table)).toEqual([
      'row 2: 2 cells, expected 3 as in the headings',
      'row 3: 4 cells, expected 3 as in the headings; no value of it is taken, as a decimal comma would shift them',
    ]);
    expect(table.rows[1]!.other['column 4']).toBe('0.3');
    expect(table.rows[1]!.values.map(({ value }) => value)).toEqual([null, null]);
    expect(table.rows[1]!.values.map(({ text }) => text)).toEqual(['0.1', '0.2']);
  });

  it('keeps columns of the same or an awkward heading', () => {
    const table = loadAbsorptionCsv('id,125,maker,maker,__proto__\na,0.1,x,y,z');
    expect(Object.entries(table.rows[0]!.other)).toEqual([
      ['maker', 'x'],
      ['maker (2)', 'y'],
      ['__proto__', 'z'],
    ]);
  });

  it('tells an empty table, one without rows and one without bands', () => {
    expect(errors(loadAbsorptionCsv(''))).toEqual(['table is empty, expected a line of headings']);
    expect(errors(loadAbsorptionCsv('id,125'))).toEqual(['table has headings and no row, expected one row or more']);
    expect(errors(loadAbsorptionCsv('id,maker\na,b'))[0]).toContain('no band column found');
  });

  it('tells quotation marks that do not pair up', () => {
    const lost = (row: number) =>
      `row ${row}: lost, as quotation marks do not pair up, expected them round a whole cell`;
    const open = loadAbsorptionCsv('id,125\na,0.1\n"b,0.2\n\nc,0.3\n');
    expect(errors(open)).toEqual([lost(3), lost(5)]);
    expect(open.rows.map(({ id }) => id)).toEqual(['a']);
    const twice = loadAbsorptionCsv('id,125\na,"0.1"x\nb,0.2\n');
    expect(errors(twice).slice(0, 2)).toEqual([lost(2), lost(3)]);
    expect(errors(loadAbsorptionCsv('id,125\n"a\nb",0.1\nc,0.2'))).toEqual([]);
  });

  it('takes no value from a row that decimal commas have torn apart', () => {
    const table = loadAbsorptionCsv('id,125,250\na,0,1,0,2');
    expect(valuesOf(table)).toEqual([
      [125, null],
      [250, null],
    ]);
    expect(errors(table)[0]).toContain('row 2: 5 cells, expected 3');
  });

  it('says of a text that is no table that it has no band column', () => {
    expect(errors(loadAbsorptionCsv('<html>'))).toContainEqual(expect.stringContaining('no band column found'));
    expect(errors(loadAbsorptionCsv('<html>\n<p>a</p>'))).toContainEqual(
      expect.stringContaining('no band column found'),
    );
  });

  it('never throws and never loses a line, whatever the text', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(() => loadAbsorptionCsv(text)).not.toThrow();
      }),
    );
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 30 }), (values) => {
        const table = loadAbsorptionCsv(`id,500\n${values.map((value, i) => `m${i},${value}`).join('\n')}`);
        expect(table.rows.map((row) => row.values[0]!.value)).toEqual(values);
        expect(table.problems).toEqual([]);
      }),
    );
  });
});

describe('loadTransmissionLossCsv(text)', () => {
  it('reads decibels, with a unit, a decimal comma or a minus sign', () => {
    const table = loadTransmissionLossCsv('name\t100\t125\t160\nwall\t45,5\t38 dB\t−1');
    expect(valuesOf(table)).toEqual([
      [100, 45.5],
      [125, 38],
      [160, -1],
    ]);
    expect(errors(table)).toEqual([]);
  });

  it('refuses percent', () => {
    expect(errors(loadTransmissionLossCsv('id,100\na,45%'))[0]).toContain('row 2, column 100: value is 45%');
  });
});

describe('loadAbsorptionJson(text)', () => {
  it('reads lists beside bands, objects by band and fields by band', () => {
    const table = loadAbsorptionJson(
      '{"entries": [{"id": "a", "bands": [125, 250], "alpha": [0.1, 0.2]}, {"id": "b", "values": {"125": 0.3}}, {"id": "c", "125": "0,4", "colour": "red"}]}',
    );
    expect(errors(table)).toEqual([]);
    expect([valuesOf(table, 0), valuesOf(table, 1), valuesOf(table, 2)]).toEqual([
      [
        [125, 0.1],
        [250, 0.2],
      ],
      [[125, 0.3]],
      [[125, 0.4]],
    ]);
    expect(table.rows[2]!.other).toEqual({ colour: 'red' });
  });

  it('names what it cannot use and keeps it', () => {
    const table = loadAbsorptionJson(
      '[{"id": "a", "bands": [125], "alpha": [0.1, 0.2]}, {"id": "b", "alpha": [1]}, 7]',
    );
    expect(table.rows).toHaveLength(3);
    expect(table.rows[0]!.other.alpha).toBe('[0.1,0.2]');
    expect(errors(table)[0]).toBe('row 1, column alpha: 2 values for 1 bands, expected as many; kept as text');
    expect(errors(table)[1]).toContain('row 2, column alpha: a list without bands');
    expect(errors(table)[2]).toBe('row 3: is 7, expected an object');
  });

  it('tells text that is no JSON, and JSON that is no table', () => {
    expect(errors(loadAbsorptionJson('{'))[0]).toContain('table is not JSON');
    expect(errors(loadTransmissionLossJson('{"a": 1}'))[0]).toContain('table has no list of rows');
  });

  it('never throws for any JSON', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        expect(() => loadTransmissionLossJson(text)).not.toThrow();
      }),
    );
  });
});

describe('rowsOrThrow(table)', () => {
  it('throws with every error', () => {
    const table = loadAbsorptionCsv('id,125\na,x\nb,y');
    expect(() => rowsOrThrow(table)).toThrow(TableError);
    expect(() => rowsOrThrow(table)).toThrow('row 3, column 125');
  });
});
