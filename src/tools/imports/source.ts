/** Reads enough of a TypeScript source to find its imports: TypeScript 7 has no parser to call. */

export interface ImportSite {
  readonly specifier: string;
  readonly kind: 'value' | 'type';
  /** Offset in the source. */
  readonly at: number;
}

const REGEX_MAY_FOLLOW =
  /(?:^|[(,=:[!&|?{;+\-*%>~^]|\b(?:return|typeof|case|in|of|delete|void|throw|new|yield|await|else|do))$/;

/**
 * The source with every comment, and what is inside strings, templates and regular expressions, turned to spaces.
 * Quotes, template expressions, line breaks and all offsets stay. A mistake over JSX text ends with its line.
 */
export function blank(source: string): string {
  const out = source.split('');
  /** Depth of `{` inside each open template expression. */
  const templates: number[] = [];
  let tail = '';
  let i = 0;

  const wipe = (from: number, to: number) => {
    for (let k = from; k < to; k++) if (out[k] !== '\n') out[k] = ' ';
  };
  /** Offset just past the closing delimiter of a one-line literal that opens at `from`, or the end of its line. */
  const endOfLiteral = (from: number, close: string): number => {
    let inClass = false;
    for (let k = from + 1; k < source.length; k++) {
      const c = source[k];
      if (c === '\n') return k;
      if (c === '\\') k++;
      else if (close === '/' && c === '[') inClass = true;
      else if (close === '/' && c === ']') inClass = false;
      else if (c === close && !inClass) return k + 1;
    }
    return source.length;
  };
  /** Wipes template text from `from` to its closing backtick or its next `${`, and goes on after that. */
  const template = (from: number) => {
    let k = from;
    for (; k < source.length; k++) {
      if (source[k] === '\\') k++;
      else if (source[k] === '`') break;
      else if (source[k] === '$' && source[k + 1] === '{') {
        templates.push(0);
        wipe(from, k);
        i = k + 2;
        tail = '{';
        return;
      }
    }
    wipe(from, k);
    i = k + 1;
    tail = '`';
  };

  while (i < source.length) {
    const c = source[i] ?? '';
    const pair = c + (source[i + 1] ?? '');
    if (pair === '//' || pair === '/*') {
      const close = pair === '//' ? source.indexOf('\n', i) : source.indexOf('*/', i + 2) + 2;
      const end = close < i + 2 ? source.length : close;
      wipe(i, end);
      i = end;
    } else if (c === '"' || c === "'") {
      const end = endOfLiteral(i, c);
      wipe(i + 1, source[end - 1] === c ? end - 1 : end);
      i = end;
      tail = c;
    } else if (c === '`') {
      template(i + 1);
    } else if (c === '/' && REGEX_MAY_FOLLOW.test(tail)) {
      const end = endOfLiteral(i, '/');
      wipe(i + 1, end - 1);
      i = end;
      tail = ')';
    } else {
      const depth = templates.at(-1);
      if (depth !== undefined && c === '}' && depth === 0) {
        templates.pop();
        template(i + 1);
        continue;
      }
      if (depth !== undefined && (c === '{' || c === '}'))
        templates[templates.length - 1] = depth + (c === '{' ? 1 : -1);
      if (c.trim() !== '') tail = (/[\w$]/.test(c) && /[\w$]$/.test(tail) && source[i - 1]?.trim() ? tail : '') + c;
      i++;
    }
  }
  return out.join('');
}

const STATEMENT =
  /(?<![.\w$])(?:import|export)(\s+type\b(?!\s+from\b|\s*,))?(?:\s*[\w$*{][\w$\s*,{}]*?\bfrom\s*|\s*)(["'])/g;
const DYNAMIC = /(?<![.\w$])import\s*\(\s*(["'`])/g;
const NEW_URL = /\bnew\s+URL\s*\(\s*(["'])(\s*)\1\s*,\s*import\.meta\.url/g;
const GLOB = /\bimport\.meta\.glob\s*(?:<[^()]*>)?\s*\(([^)]*)\)/g;

/** Every import of a source: static, re-exported, dynamic, a worker's `new URL`, and Vite's `import.meta.glob`. */
export function importsOf(source: string): readonly ImportSite[] {
  const code = blank(source);
  const sites: ImportSite[] = [];
  const add = (quote: number, kind: ImportSite['kind']) => {
    const close = code.indexOf(code[quote] ?? '', quote + 1);
    if (close > quote) sites.push({ specifier: source.slice(quote + 1, close), kind, at: quote });
  };
  for (const match of code.matchAll(STATEMENT)) {
    // Only `import` stands before a bare string; `export "x"` is no import.
    if (match[0].startsWith('export') && !/\bfrom\s*["']$/.test(match[0])) continue;
    add(match.index + match[0].length - 1, match[1] === undefined ? 'value' : 'type');
  }
  for (const match of code.matchAll(DYNAMIC)) add(match.index + match[0].length - 1, 'value');
  for (const match of code.matchAll(NEW_URL)) add(match.index + match[0].search(/["']/), 'value');
  for (const match of code.matchAll(GLOB)) {
    const start = match.index + match[0].length - 1 - (match[1] ?? '').length;
    const strings = (match[1] ?? '').replace(/\{[\s\S]*/, '').matchAll(/(["'`])\s*\1/g);
    for (const string of strings) add(start + string.index, 'value');
  }
  return sites.sort((a, b) => a.at - b.at);
}

/** Line number, from 1, of an offset. */
export function lineOf(source: string, at: number): number {
  return source.slice(0, at).split('\n').length;
}
