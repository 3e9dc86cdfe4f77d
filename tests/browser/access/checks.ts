/** What can be measured of any screen as it stands: each check gives one line per fault, none when all is well. */
import type { Page } from 'playwright-core';

/** Target size (minimum), WCAG 2.2 success criterion 2.5.8, CSS pixels. */
const LEAST_TARGET = 24;
/** More Tab stops than any screen has: who is still going round then is in a trap. */
const MOST_STOPS = 600;

/**
 * Targets that are smaller than they may be, and stand so near another that a circle about their middle meets it or its
 * circle. A label is part of its box, and a link in a sentence is as high as its line (both as 2.5.8 has it).
 */
export function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate((least) => {
    const shown = (one: Element) => one.checkVisibility({ visibilityProperty: true, opacityProperty: false });
    const named = (one: Element) =>
      `${one.tagName.toLowerCase()}.${one.className} "${(one.getAttribute('aria-label') ?? one.textContent ?? '').trim().slice(0, 40)}"`;
    const boxOf = (one: Element): DOMRect => {
      const label = one.matches('input') ? one.closest('label') : null;
      return (label ?? one).getBoundingClientRect();
    };
    const inText = (one: Element) =>
      one.matches('a') &&
      getComputedStyle(one).display === 'inline' &&
      [...(one.parentElement?.childNodes ?? [])].some((node) => node.nodeType === 3 && node.textContent?.trim());
    const modal = document.querySelector('dialog:modal');
    const targets = [...(modal ?? document).querySelectorAll('a[href], button, input, select, textarea, summary')]
      .filter((one) => shown(one) && !inText(one))
      .map((one) => ({ one, box: boxOf(one) }))
      .filter(({ box }) => box.width > 0 && box.height > 0);
    const middle = (box: DOMRect) => ({ x: box.x + box.width / 2, y: box.y + box.height / 2 });
    const small = ({ box }: { box: DOMRect }) => Math.min(box.width, box.height) < least - 0.01;
    const apart = (x: number, y: number, box: DOMRect) =>
      Math.hypot(Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom));
    return targets.filter(small).flatMap((target) => {
      const { x, y } = middle(target.box);
      const near = targets.find((other) => {
        if (
          other.one === target.one ||
          (other.box.x === target.box.x && other.box.y === target.box.y && other.box.width === target.box.width)
        )
          return false;
        if (apart(x, y, other.box) < least / 2) return true;
        const at = middle(other.box);
        return small(other) && Math.hypot(at.x - x, at.y - y) < least;
      });
      if (near === undefined) return [];
      const { width, height } = target.box;
      return [`${named(target.one)} is ${width.toFixed(1)} by ${height.toFixed(1)}, near ${named(near.one)}`];
    });
  }, LEAST_TARGET);
}

/** Whether the page has to be moved sideways to be read (1.4.10). */
export function sideways(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    /** Whether a box of its own scrolls it, as drawings and tables may. */
    const inBox = (one: Element | null): boolean =>
      one !== null &&
      one !== document.body &&
      (getComputedStyle(one).overflowX !== 'visible' || inBox(one.parentElement));
    const widest = [...document.querySelectorAll('body *')]
      .filter((one) => one.getBoundingClientRect().right > clientWidth + 1 && !inBox(one.parentElement))
      .slice(0, 4)
      .map((one) => `${one.tagName.toLowerCase()}.${one.getAttribute('class')}`);
    return [`${scrollWidth} pixels wide in ${clientWidth}: ${widest.join(', ')}`];
  });
}

/** What says where one is: a title and a language of the page, one main part, one first heading, and no id twice. */
export function bearings(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const faults: string[] = [];
    const { lang } = document.documentElement;
    if (lang !== 'en' && lang !== 'es') faults.push(`language of the page: "${lang}"`);
    if (!/^\S.* · Underlawn$/.test(document.title)) faults.push(`title of the page: "${document.title}"`);
    for (const [name, wanted] of [
      ['main', 1],
      ['h1', 1],
    ] as const) {
      const count = document.querySelectorAll(name).length;
      if (count !== wanted) faults.push(`${count} of ${name}`);
    }
    const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
    for (const id of new Set(ids.filter((id, at) => ids.indexOf(id) !== at))) faults.push(`id twice: ${id}`);
    return faults;
  });
}

/** Controls that can be seen to be called one thing and are called another (2.5.3). */
export function misnamed(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const plain = (text: string) =>
      text
        .toLowerCase()
        .replace(/[^\p{L}\p{N}]+/gu, ' ')
        .trim();
    return [
      ...document.querySelectorAll('a[aria-label], button[aria-label], [role][aria-label]:is(a, button)'),
    ].flatMap((one) => {
      const seen = plain(
        [...one.childNodes]
          .map((node) =>
            node instanceof Element && node.matches('.vh, [aria-hidden="true"]') ? '' : (node.textContent ?? ''),
          )
          .join(' '),
      );
      const name = plain(one.getAttribute('aria-label') ?? '');
      return name.includes(seen) ? [] : [`"${seen}" is called "${name}"`];
    });
  });
}

interface Stop {
  readonly key: string;
  readonly fault: string | null;
}

/** Where the focus is: what it is called, whether a ring shows it and whether some of it can be seen. */
function stopOf(): Stop | null {
  const at = document.activeElement;
  if (at === null || at === document.body || at === document.documentElement) return null;
  const known = window as unknown as { stops?: Element[] };
  known.stops ??= [];
  if (!known.stops.includes(at)) known.stops.push(at);
  const key = String(known.stops.indexOf(at));
  const name = `${at.tagName.toLowerCase()}.${at.className}#${at.id} "${(at.getAttribute('aria-label') ?? at.textContent ?? '').trim().slice(0, 40)}"`;
  const outer = at.matches('input') ? (at.closest('label') ?? at) : at;
  const box = outer.getBoundingClientRect();
  const spots = [0.1, 0.3, 0.5, 0.7, 0.9].flatMap((x) =>
    [0.1, 0.3, 0.5, 0.7, 0.9].map((y) => ({ x: box.x + box.width * x, y: box.y + box.height * y })),
  );
  const seen = spots.some(({ x, y }) => {
    const top = document.elementFromPoint(x, y);
    return top !== null && (outer.contains(top) || top.closest('label') === outer);
  });
  if (!seen) {
    const top = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
    const where = `${Math.round(box.x)},${Math.round(box.y)} ${Math.round(box.width)}x${Math.round(box.height)}`;
    return { key, fault: `${name} at ${where} is hidden behind ${top?.tagName.toLowerCase()}.${top?.className}` };
  }
  const rings = [at, outer, ...outer.querySelectorAll('*')].some((one) => {
    const { outlineStyle, outlineWidth } = getComputedStyle(one);
    return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
  });
  return { key, fault: rings ? null : `${name} shows no ring` };
}

/** Goes through the whole screen with Tab: the focus is always shown and never wholly covered, and comes out at the end. */
export async function tabThrough(page: Page): Promise<string[]> {
  await page.evaluate(() => {
    (document.activeElement as HTMLElement | null)?.blur();
    Object.assign(window, { stops: [] });
  });
  const faults: string[] = [];
  const passed = new Set<string>();
  for (let i = 0; i < MOST_STOPS; i++) {
    await page.keyboard.press('Tab');
    const stop = await page.evaluate(stopOf);
    // At its end the page gives the focus to the browser, or begins again. It may begin at its end: where the focus was.
    if (stop === null && i === 0) continue;
    if (stop === null || passed.has(stop.key)) return passed.size > 0 ? faults : ['nothing takes the focus'];
    passed.add(stop.key);
    if (stop.fault !== null) faults.push(stop.fault);
  }
  return [...faults, `no end after ${MOST_STOPS} stops`];
}
