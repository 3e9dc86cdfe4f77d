/** What a person at the page sees, hears and reads there, as text; and what that is in the words of a specification. */
import type { Page } from 'playwright-core';
import type { Sight } from '../../control/spec/vocabulary.ts';

interface Note {
  readonly what: string;
  readonly reading: string;
}

export interface Seen {
  /** The band over the picture; empty while nothing alarms. */
  readonly alarm: string;
  /** Captions of what is heard. */
  readonly heard: readonly string[];
  /** The notebook, oldest first. */
  readonly notes: readonly Note[];
  /** The steps of the call sheet, each with its state in words. */
  readonly stages: readonly string[];
  /** Parts in the strip at which one is. */
  readonly here: readonly string[];
  /** The dialog at the end of a call; empty until then. */
  readonly end: string;
}

export type Sights = Readonly<Partial<Record<Sight, boolean>>>;

export function look(page: Page): Promise<Seen> {
  return page.evaluate(() => {
    const text = (node: Node | null | undefined): string => (node?.textContent ?? '').trim();
    const all = (selector: string): Element[] => [...document.querySelectorAll(selector)];
    return {
      alarm: text(document.querySelector('.alarm-band p')),
      heard: all('.captions li').map(text),
      notes: all('.notebook tbody tr')
        .map((row) => ({
          what: text(row.querySelector('th')?.firstChild),
          reading: text(row.querySelector('.reading')),
        }))
        .reverse(),
      stages: all('.stages li').map(text),
      here: all('.part-chip:has(.here)').map(text),
      end: text(document.querySelector('dialog[open]')),
    };
  });
}

/** Lamp and buzzer as the page shows them now. */
export function alarmSeen({ alarm }: Seen): Sights {
  return { lamp: /lamp lit/.test(alarm), buzzer: /buzzer sounding/.test(alarm) };
}

const CIRCUITS = [
  ['alarm', 'alarmHandle'],
  ['compressor', 'compressorHandle'],
  ['pump', 'pumpHandle'],
] as const;

/** What a line of the notebook says of the sights. */
export function sightsIn({ what, reading }: Note): Sights {
  const alarm = /^lamp (lit|dark), buzzer (sounding|silent)$/.exec(reading);
  if (alarm) return { lamp: alarm[1] === 'lit', buzzer: alarm[2] === 'sounding' };
  if (what === 'Test held') return { lamp: /^lamp lights/.test(reading), buzzer: /buzzer sounds$/.test(reading) };
  if (/ lifted$/.test(what)) return { lamp: !/lamp dark$/.test(reading) };
  if (what === 'Selector') return /^Hand: pump/.test(reading) ? { pump: /pump runs$/.test(reading) } : {};
  if (what === 'Compressor') return { compressor: reading !== 'silent' };
  const handles = CIRCUITS.flatMap(([circuit, handle]): [Sight, boolean][] => {
    const lever = what === 'Breakers' ? new RegExp(`${circuit} (\\w+)`).exec(reading)?.[1] : undefined;
    const moved = what.toLowerCase() === `${circuit} breaker` ? reading : undefined;
    const at = lever ?? moved;
    return at === undefined ? [] : [[handle, at === 'on']];
  });
  return Object.fromEntries(handles);
}

/** How often the page told that a lamp came on, went out, or that the buzzer started. */
export function told(notes: readonly Note[]): readonly [lit: number, dark: number, sounds: number] {
  const times = (reading: string): number => notes.filter((note) => note.reading === reading).length;
  return [times('alarm lamp comes on'), times('alarm lamp goes out'), times('buzzer starts')];
}
