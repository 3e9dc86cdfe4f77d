/** Chosen files as records to be replayed. */
import { LARGEST_FILE_bytes, tooLarge } from '../../calls/problems.ts';
import type { Refused } from '../../records/marked.ts';
import type { Held } from './held.ts';

export interface Chosen {
  readonly file: string;
  readonly who: string;
  readonly text: string;
  /** Of one that was refused unread. */
  readonly marked?: Refused;
}

/** A record as the debrief hands it out, or answers as the quiz does, and a browser that already has one of that name. */
const AS_HANDED_OUT = /^[\w-]+\.(?:record|answers)(?: ?\(\d+\))?$/;

/**
 * Whose record a file is: its name says so. One that is still named as it was handed out names only its call; where it lies in
 * a folder of the folder that was chosen, that is somebody's.
 */
export function whoOf(path: string): string {
  const parts = path.split('/');
  const name = (parts.at(-1) ?? '').replace(/\.json$/i, '');
  const folder = parts.length > 2 ? parts.at(-2) : undefined;
  return AS_HANDED_OUT.test(name) && folder ? folder : name;
}

/** Reads the records among chosen files, without those that are on the sheet already. */
export async function readChosen(files: readonly File[], before: readonly Held[]): Promise<readonly Chosen[]> {
  const known = new Set(before.map(keyOf));
  const records = files.filter(({ name }) => /\.json$/i.test(name));
  const read = await Promise.all(records.map(readOne));
  return read
    .filter((one) => {
      const key = keyOf(one);
      return !known.has(key) && known.add(key);
    })
    .sort((a, b) => (a.file < b.file ? -1 : 1));
}

async function readOne(file: File): Promise<Chosen> {
  const path = file.webkitRelativePath || file.name;
  const who = whoOf(path);
  const refused = (more: Pick<Refused, 'why' | 'problems'>): Chosen => ({
    file: path,
    who,
    text: '',
    marked: { state: 'refused', who, otherEngine: false, ...more },
  });
  if (file.size > LARGEST_FILE_bytes) return refused({ problems: [tooLarge(file.size)] });
  try {
    return { file: path, who, text: await file.text() };
  } catch {
    return refused({ why: { id: 'class.unread' }, problems: [] });
  }
}

function keyOf({ file, text }: Pick<Held, 'file' | 'text'>): string {
  return `${file}\n${text}`;
}
