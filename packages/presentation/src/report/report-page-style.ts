/** Paper that the report can be set for. */
export const reportPages = ['a4', 'letter'] as const;
export type ReportPage = (typeof reportPages)[number];

/** Margins and page numbers, and the paper when it is named; otherwise the printer's own is used. */
export function reportPageStyle(page: ReportPage | undefined): string {
  const size = page === undefined ? '' : `  size: ${page === 'a4' ? 'A4' : 'letter'};\n`;
  return `
@page {
${size}  margin: 14mm 13mm 16mm;
  @bottom-right {
    content: counter(page) " / " counter(pages);
    font: 8pt sans-serif;
    color: #444;
  }
}
`;
}
