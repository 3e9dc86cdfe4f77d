/** Rows of a CSV file (RFC 4180), also as spreadsheets write it where the decimal mark is a comma: with semicolons. */

/** UTF-8's mark, with which spreadsheets begin a file. */
const MARK = /^\uFEFF/;

export function readCsv(text: string): string[][] {
  const plain = text.replace(MARK, '');
  const firstLine = /^[^\r\n]*/.exec(plain)?.[0] ?? '';
  const mark = firstLine.includes(';') && !firstLine.includes(',') ? ';' : ',';
  const rows: string[][] = [];
  let row: string[] = [];
  let field = '';
  let quoted = false;
  const endField = () => {
    row.push(field);
    field = '';
  };
  const endRow = () => {
    endField();
    if (row.some((one) => one !== '')) rows.push(row);
    row = [];
  };
  for (let i = 0; i < plain.length; i++) {
    const sign = plain.charAt(i);
    if (quoted) {
      if (sign !== '"') field += sign;
      else if (plain.charAt(i + 1) === '"') {
        field += '"';
        i++;
      } else quoted = false;
    } else if (sign === '"') quoted = true;
    else if (sign === mark) endField();
    else if (sign === '\n') endRow();
    else if (sign !== '\r') field += sign;
  }
  endRow();
  return rows;
}
