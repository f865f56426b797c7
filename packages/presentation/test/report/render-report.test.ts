import type { Problem } from '@boothwright/language';
import { describe, expect, test } from 'vitest';
import { renderReportHtml } from '../../src/report/render-report-html.js';
import { renderReportMarkdown } from '../../src/report/render-report-markdown.js';
import type { ReportInput } from '../../src/report/report-input.js';
import { reportOf } from '../../src/report/report-of.js';
import { sampleInput } from './report-sample.js';

const sha256 = (text: string) => `hash-of-${text.length}`;
const html = (input: ReportInput = sampleInput) => renderReportHtml(reportOf(input), { sha256 });
const markdown = (input: ReportInput = sampleInput) => renderReportMarkdown(reportOf(input));

const nasty =
  '</style><script>alert(1)</script> <img src=x onerror=alert(1)> | `code` **bold** [link](javascript:x)\n# head\u001b[31m\u202e';

/** The sample with every name and sentence of the writer turned hostile. */
function hostile(): ReportInput {
  const { result } = sampleInput;
  const { alcove } = result.booths;
  return {
    ...sampleInput,
    variant: nasty,
    result: {
      ...result,
      file: nasty,
      booths: { [nasty]: { ...alcove!, title: nasty } },
      assemblies: Object.fromEntries(
        Object.entries(result.assemblies).map(([, each]) => [nasty, { ...each, title: nasty }]),
      ),
      requirements: result.requirements.map((each) => ({
        ...each,
        text: `require ${nasty}`,
        booth: nasty,
        limitedBy: `face:${nasty}`,
      })),
      findings: result.findings.map((each) => ({ ...each, message: nasty, fix: nasty })),
      cautions: result.cautions.map((each) => ({ ...each, hazard: nasty, number: nasty, ask: nasty })),
      variants: Object.fromEntries(
        Object.entries(result.variants).map(([, each]) => [nasty, { ...each, title: nasty }]),
      ),
      leavesOut: [nasty],
    },
  };
}

describe('renderReportHtml(report, options)', () => {
  test('is one page that runs nothing and lets nothing in but its own styles', () => {
    const page = html();
    expect(page).not.toMatch(/<script|<link|<img|<iframe|<object|@import|url\(| on[a-z]+=| style=|javascript:/i);
    expect(
      page.match(/https?:\/\/[^"<\s]*/g)?.filter((address) => address !== 'http://www.w3.org/2000/svg') ?? [],
    ).toEqual([]);
    const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(page)?.[1];
    const styles = [...page.matchAll(/<style>([^<]*)<\/style>/g)].map(([, style]) => `'sha256-${sha256(style ?? '')}'`);
    expect(styles).toHaveLength(2);
    expect(policy).toBe(`default-src 'none'; style-src ${styles.join(' ')}; base-uri 'none'; form-action 'none'`);
  });

  test('has headings in order, a caption and scopes on every table, title and description in every picture', () => {
    const page = html();
    const levels = [...page.matchAll(/<h([1-6])[ >]/g)].map(([, level]) => Number(level));
    expect(levels[0]).toBe(1);
    expect(levels.filter((level, index) => index > 0 && level > (levels[index - 1] ?? 0) + 1)).toEqual([]);
    for (const [table] of page.matchAll(/<table.*?<\/table>/gs)) {
      expect(table).toMatch(/^<table[^>]*><caption>.+?<\/caption>/);
      expect(table).not.toMatch(/<th(?! scope="(col|row)")(?=[ >])/);
    }
    for (const [svg] of page.matchAll(/<svg.*?<\/svg>/gs)) expect(svg).toMatch(/<title>.+?<\/title><desc>.+?<\/desc>/);
  });

  test('shows hostile names letter by letter', () => {
    const page = html(hostile());
    for (const sign of ['<script', '<img', '\u001b', '\u202e']) expect(page.includes(sign), sign).toBe(false);
    expect(page.includes('&lt;script&gt;alert(1)&lt;/script&gt;')).toBe(true);
    // Elements without content of their own apart, everything that opens closes.
    for (const tag of ['p', 'table', 'td', 'th', 'li', 'dl', 'dd', 'section', 'svg', 'style', 'title'])
      expect(page.split(`<${tag}>`).length + page.split(`<${tag} `).length, tag).toBe(
        page.split(`</${tag}>`).length + 1,
      );
  });

  test('lets only long words break, so that a column breaks no short one', () => {
    const sections = [
      { id: 'a', title: 'a', lead: 'l', blocks: [{ kind: 'text', text: `sheets ${'x'.repeat(30)}` }] },
    ] as const;
    const page = renderReportHtml({ title: 't', subtitle: 's', front: [], sections }, { sha256 });
    expect(page).toContain('<p>sheets xxxxxxxxxxxx<wbr>xxxxxxxxxxxx<wbr>xxxxxx</p>');
  });

  test('is set for the paper that is named', () => {
    expect(html()).not.toMatch(/size: (A4|letter)/);
    expect(renderReportHtml(reportOf(sampleInput), { sha256, page: 'a4' })).toContain('size: A4;');
    expect(renderReportHtml(reportOf(sampleInput), { sha256, page: 'letter' })).toContain('size: letter;');
  });

  test('never calls anything safe, compliant or approved', () => {
    expect(html()).not.toMatch(/\b(safe|compliant|approved)\b/i);
  });
});

describe('renderReportMarkdown(report)', () => {
  test('holds every table of the HTML, with the same cells', () => {
    const cells = (page: string) => [...page.matchAll(/<t[dh][^>]*>(.*?)<\/t[dh]>/gs)].length;
    const rows = markdown()
      .split('\n')
      .filter((line) => line.startsWith('| '));
    const counted = rows
      .filter((line) => !/^\| [:|\- ]+$/.test(line))
      .flatMap((line) => line.split(/(?<!\\)\|/).slice(1, -1));
    expect(counted).toHaveLength(cells(html()));
  });

  test('shows hostile names letter by letter', () => {
    const text = markdown(hostile());
    for (const sign of ['\u001b', '\u202e']) expect(text.includes(sign), sign).toBe(false);
    const outsideCode = text.replace(/``? .*? ``?|`[^`\n]*`/g, '');
    expect(outsideCode).not.toMatch(/(?<!\\)<(script|img|\/style)/);
    expect(outsideCode).not.toMatch(/(?<!\\)\]\(/);
    // A newline in a name makes no heading of its own, and a bar no cell.
    expect(text).not.toMatch(/^# head/m);
    const tables = text.split('\n\n').filter((block) => block.startsWith('| '));
    expect(tables.length).toBeGreaterThan(5);
    for (const block of tables) {
      const widths = block
        .trimEnd()
        .split('\n')
        .map((line) => line.split(/(?<!\\)\|/).length);
      expect(new Set(widths).size, block).toBe(1);
    }
  });

  test('guards the start of a line that would make a list or a heading', () => {
    const report = {
      title: 't',
      subtitle: '1. s',
      front: [],
      sections: [
        {
          id: 'a',
          title: 'a',
          lead: 'l',
          blocks: [
            { kind: 'text', text: '- not a point' },
            { kind: 'text', text: '12. not the twelfth' },
            { kind: 'text', text: '# not a heading' },
          ],
        },
      ],
    } as const;
    const text = renderReportMarkdown(report);
    expect(text).toContain('\\- not a point');
    expect(text).toContain('12\\. not the twelfth');
    expect(text).toContain('\\# not a heading');
  });
});

describe('reportOf(input)', () => {
  const error: Problem = {
    id: 'unknown-unit',
    severity: 'error',
    message: 'found `mmm`, expected a length',
    range: { file: 'sample.booth', from: 55, to: 58 },
  } as Problem;

  test('marks at the top what is wrong with the text, with place and name', () => {
    const input: ReportInput = {
      ...sampleInput,
      problems: [error],
      result: {
        ...sampleInput.result,
        unread: [{ part: 'booth', name: 'attic', message: 'x', range: error.range }],
      },
    };
    const page = markdown(input);
    expect(page.split('\n\n').slice(2, 3)[0]).toContain(
      'The text has an error: this report holds what could be understood, the rest is missing',
    );
    expect(page).toContain('sample.booth, line 3, column 3: error `unknown-unit`: found `mmm`, expected a length');
    expect(page).toContain('nothing that depends on it is judged: booth attic.');
  });

  test('never says met alone where a requirement could not be read', () => {
    const met = sampleInput.result.requirements.filter(({ verdict }) => verdict === 'met');
    const unread = [{ part: 'require', name: null, message: 'x', range: error.range }];
    const page = markdown({ ...sampleInput, result: { ...sampleInput.result, requirements: met, unread } });
    expect(page).toContain(
      '> **MET: all 2 requirements are met by the prediction**\n>\n> One requirement could not be read and is not among them.',
    );
  });

  test('tells a hazard that two booths share once', () => {
    const { cautions } = sampleInput.result;
    const page = markdown({ ...sampleInput, result: { ...sampleInput.result, cautions: [...cautions, ...cautions] } });
    expect(page).toBe(markdown());
  });

  test('marks data that the text itself calls invented, in its own words', () => {
    expect(markdown()).toContain('> **Demo data: the text says that figures in it are invented**');
    expect(markdown()).toContain('A sample for tests. Everything in it is invented.');
    expect(markdown()).toContain('cork, “invented demo data”');
    const silent = { ...sampleInput, spec: { ...sampleInput.spec, materials: new Map() }, texts: new Map() };
    expect(markdown(silent)).not.toContain('Demo data');
  });

  test('writes the same report for the same text', () => {
    expect(html()).toBe(html());
    expect(markdown()).toBe(markdown());
  });
});
