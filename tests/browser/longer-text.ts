/** Runs in the page: its texts longer and wider, and what that breaks. Each function stands alone, for it is handed over. */

/**
 * Every word a third longer, as another language could have it, by vowels written twice; and the spacing of text that WCAG 2.2,
 * success criterion 1.4.12, has a page stand. Drawings keep theirs.
 */
export function lengthen(): void {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    if (node.parentElement?.closest('svg, script, noscript, textarea')) continue;
    const text = node as Text;
    let owed = 0;
    text.data = text.data.replace(/\p{L}/gu, (letter) => {
      owed += 0.3;
      if (owed < 1 || !/[aeiouáéíóú]/i.test(letter)) return letter;
      owed -= 1;
      return letter + letter.toLowerCase();
    });
  }
  const spaced = new CSSStyleSheet();
  spaced.replaceSync(`
    :not(svg, svg *) { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
    p { margin-bottom: 2em !important; }
  `);
  document.adoptedStyleSheets = [spaced];
}

/** What no longer holds: the page runs sideways, a control cuts off its text, or one text lies on another. */
export function broken(): string[] {
  const found: string[] = [];
  const name = (one: Element) => {
    const at = [...one.classList].map((it) => `.${it}`).join('');
    return `${one.localName}${at} “${(one.textContent ?? '').trim().slice(0, 30)}”`;
  };
  const wide = document.documentElement.scrollWidth - innerWidth;
  if (wide > 0) {
    const worst = [...document.body.querySelectorAll('*')]
      .filter((one) => one.getBoundingClientRect().right > innerWidth + 1)
      .filter((one) => !inScroller(one))
      .slice(0, 3);
    found.push(`the page runs ${wide} px sideways: ${worst.map(name).join('; ')}`);
  }

  function inScroller(one: Element): boolean {
    for (let at = one.parentElement; at !== null && at !== document.body; at = at.parentElement) {
      if (getComputedStyle(at).overflowX !== 'visible') return true;
    }
    return false;
  }

  /** Cut off to nothing, and still read out. */
  function forTheEar(one: Element): boolean {
    for (let at: Element | null = one; at !== null; at = at.parentElement) {
      if (getComputedStyle(at).clipPath === 'inset(50%)') return true;
    }
    return false;
  }

  /** Where the lines of a text stand that is not for the ear alone and not part of a drawing. */
  function textsIn(whole: Element): { readonly of: Element; readonly rects: readonly DOMRect[] }[] {
    const texts: { of: Element; rects: DOMRect[] }[] = [];
    const walker = document.createTreeWalker(whole, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const of = node.parentElement;
      if (of === null || node.textContent?.trim() === '' || of.closest('.vh, svg') || forTheEar(of)) continue;
      if (!of.checkVisibility({ opacityProperty: true, visibilityProperty: true })) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      texts.push({ of, rects: [...range.getClientRects()] });
    }
    return texts;
  }

  const controls = 'button, summary, a.primary, a.secondary, .file-button, .choice span, .option, .part-chip, .tag';
  for (const one of document.querySelectorAll<HTMLElement>(controls)) {
    const { left, right, top, bottom } = one.getBoundingClientRect();
    const out = textsIn(one).some(({ rects }) =>
      rects.some((at) => at.left < left - 1 || at.right > right + 1 || at.top < top - 4 || at.bottom > bottom + 4),
    );
    if (out) found.push(`runs out: ${name(one)}`);
  }

  /** Of a box what its ancestors show of it. */
  function shown(rect: DOMRect, of: Element): DOMRect | undefined {
    let { left, top, right, bottom } = rect;
    for (let at: Element | null = of; at !== null && at !== document.body; at = at.parentElement) {
      const { overflowX, overflowY } = getComputedStyle(at);
      if (overflowX === 'visible' && overflowY === 'visible') continue;
      const box = at.getBoundingClientRect();
      [left, right] = [Math.max(left, box.left), Math.min(right, box.right)];
      [top, bottom] = [Math.max(top, box.top), Math.min(bottom, box.bottom)];
    }
    return right - left > 2 && bottom - top > 2 ? new DOMRect(left, top, right - left, bottom - top) : undefined;
  }

  /** What lies over the rest on purpose: what stays at the top, and what stands on the picture or on a drawing. */
  const LIES_OVER =
    '.hand header, .meter-side, .tabs, .alarm-band, .stage, .build-top, .replay-picture, .works-picture, ' +
    '.timeline, .strips, .days-drawing, .plan, .class-scroll, .instructor-sheet, .troubles, dialog';
  const lines = textsIn(document.body)
    .filter(({ of }) => of.closest(LIES_OVER) === null)
    .flatMap(({ of, rects }) => rects.map((rect) => ({ of, rect: shown(rect, of) })));
  for (const [i, { rect: a, of }] of lines.entries()) {
    for (const { rect: b, of: other } of lines.slice(i + 1)) {
      // Lines of one text keep apart by themselves; what does not fit one of them ends in three dots.
      if (a === undefined || b === undefined || of === other) continue;
      const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      if (across > 3 && down > 5) found.push(`over each other: ${name(of)} and ${name(other)}`);
    }
  }
  return [...new Set(found)];
}
