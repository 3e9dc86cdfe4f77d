import { posix } from 'node:path';
import { access, BANS, DATA, folderOf, MAY_READ_DATA, PACKAGES } from './rules.ts';
import { blank, type ImportSite, importsOf, lineOf } from './source.ts';

export interface Finding {
  /** Path below `src`. */
  readonly file: string;
  readonly line: number;
  readonly rule: string;
  readonly mend: string;
}

type Complaint = Pick<Finding, 'rule' | 'mend'>;

/** Everything wrong with one source file; `file` is its path below `src`, with forward slashes. */
export function checkFile(file: string, source: string): readonly Finding[] {
  const folder = folderOf(file);
  if (folder === undefined) {
    const rule = 'lies in no known folder of src';
    return file.endsWith('.d.ts') ? [] : [{ file, line: 1, rule, mend: 'move it, or name its folder in the rules' }];
  }
  const findings: Finding[] = [];
  for (const site of importsOf(source)) {
    const complaint = complain(file, site);
    if (complaint !== undefined) findings.push({ file, line: lineOf(source, site.at), ...complaint });
  }
  const code = blank(source);
  for (const { pattern, folders, rule, mend } of BANS) {
    if (!folders.includes(folder)) continue;
    for (const match of code.matchAll(pattern)) {
      const name = match[0].replaceAll(/\s+/g, '');
      findings.push({ file, line: lineOf(source, match.index), rule: `${name} ${rule}`, mend });
    }
  }
  return findings.sort((a, b) => a.line - b.line);
}

function complain(file: string, { specifier, kind }: ImportSite): Complaint | undefined {
  const folder = folderOf(file);
  if (folder === undefined) return undefined;
  if (!specifier.startsWith('.')) return complainOfPackage(folder, specifier);
  const target = posix.normalize(posix.join('src', posix.dirname(file), specifier));
  if (!target.startsWith('src/')) return complainOfData(folder, target);
  if (!/\.\w+(\?\w+)?$/.test(specifier)) {
    return { rule: `${specifier} has no file ending`, mend: `write '${specifier}.ts'` };
  }
  const to = target.slice('src/'.length);
  const name = folderOf(to) ?? to;
  const granted = access(file, to);
  if (granted === 'all' || (granted === 'types' && kind === 'type')) return undefined;
  if (granted === 'types') return { rule: `${folder} may take only types from ${to}`, mend: 'write import type' };
  return {
    rule: `${folder} may not import ${name === folder ? to : name} (${to})`,
    mend: 'pass the value in, or move what both need to an earlier folder; see docs/imports.md',
  };
}

function complainOfPackage(folder: keyof typeof PACKAGES, specifier: string): Complaint | undefined {
  const allowed = PACKAGES[folder].some(
    (name) => name === '*' || specifier === name || specifier.startsWith(name.endsWith(':') ? name : `${name}/`),
  );
  if (allowed) return undefined;
  return {
    rule: `${folder} may not use ${specifier}`,
    mend: `it may use: ${PACKAGES[folder].join(', ') || 'no package'}`,
  };
}

function complainOfData(folder: keyof typeof PACKAGES, target: string): Complaint | undefined {
  const isData = DATA.some((place) => target === place || target.startsWith(`${place}/`));
  if (!isData)
    return { rule: `${target} lies outside src`, mend: `only ${DATA.join(', ')} may be imported from there` };
  if (MAY_READ_DATA.includes(folder)) return undefined;
  return { rule: `${folder} may not read data (${target})`, mend: 'take it as a value' };
}
