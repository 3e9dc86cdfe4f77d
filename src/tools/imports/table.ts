import { type Access, access, BANS, DATA, FOLDERS, type Folder, MAY_READ_DATA, PACKAGES, PURE } from './rules.ts';

const MARK: Readonly<Record<Access, string>> = { all: '●', types: '○', none: '' };

/** The page `docs/imports.md`, whole. */
export function importsPage(): string {
  return `# What may import what

<!-- Made by \`npm run imports\` from src/tools/imports/rules.ts. Change it there. -->

\`npm test\` checks this on every run. A folder of \`src\` may import those before it, never those after it. The row
imports the column: ${MARK.all} anything, ${MARK.types} types only, from these files: \`scene\`, \`service/message.ts\` and
\`calls/view.ts\` (yard, sound), \`service/message.ts\` (words). One file looks ahead: \`calls/view.ts\` takes types from
\`scene/types.ts\`.

${matrix()}

## Packages

${table(
  ['folder', 'may use'],
  FOLDERS.map((folder) => [folder, packages(folder)]),
)}

${list(DATA)} may be imported as data by ${list(MAY_READ_DATA)}.

## What the same bits everywhere costs

These folders are pure: ${list(PURE)}.
They run alike in Node, in a worker and in every browser, so there is no machine in them, no clock and no chance.
Arithmetic is \`+ - * /\` and the exact functions of \`Math\`; \`plant/num\` has exp, log, pow and cos that give the
same bits in every engine. Looked for in code, outside comments and strings:

${table(
  ['banned', 'in', 'because it', 'instead'],
  BANS.map(({ names, folders, rule, mend }) => [list(names), where(folders), rule, mend]),
)}
`;
}

function matrix(): string {
  const rows = FOLDERS.map((from) => [
    `**${from}**`,
    ...FOLDERS.map((to) => (from === to ? '·' : MARK[widest(from, to)])),
  ]);
  return table(['', ...FOLDERS], rows);
}

/** The most `from` may take of any file of `to`. */
function widest(from: Folder, to: Folder): Access {
  const files = ['any.ts', 'message.ts', 'view.ts'].map((file) => `${to}/${file}`);
  const granted = files.map((file) => access(`${from}/any.ts`, file));
  return granted.find((it) => it === 'all') ?? granted.find((it) => it === 'types') ?? 'none';
}

function packages(folder: Folder): string {
  const names = PACKAGES[folder].map((name) =>
    name === '*' ? 'any' : name === 'node:' ? "Node's own" : `\`${name}\``,
  );
  return names.join(', ') || 'none';
}

function where(folders: readonly Folder[]): string {
  if (folders.length === FOLDERS.length - 1) return 'all but tools';
  const extra = folders.filter((folder) => !PURE.includes(folder));
  return ['pure folders', ...extra].join(' and ');
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

function list(names: readonly string[]): string {
  return names.map((name) => `\`${name}\``).join(', ');
}
