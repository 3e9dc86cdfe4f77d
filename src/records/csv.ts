/** Rows as CSV (RFC 4180): commas, a line's end of two characters, quotes where they are needed. */
export type Value = string | number | boolean;

export function csvOf(rows: readonly (readonly Value[])[]): string {
  return rows.map((row) => `${row.map(field).join(',')}\r\n`).join('');
}

function field(value: Value): string {
  const text = typeof value === 'string' ? unarmed(value) : String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** A text that a spreadsheet would take for a formula is written as text: somebody else typed it. */
function unarmed(text: string): string {
  return /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
}

/** A number to the digits that a table shows; empty where there is none. */
export function thousandths(value: number | undefined): Value {
  return value === undefined ? '' : Math.round(value * 1000) / 1000;
}
