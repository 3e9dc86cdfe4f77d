/** Leads to a heading further down the page, and has a screen reader go on there. */
export function headingOf(id: string): void {
  const heading = document.getElementById(id);
  heading?.scrollIntoView();
  heading?.focus({ preventScroll: true });
}
