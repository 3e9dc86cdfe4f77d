/**
 * `npm run icons`: the pictures of the installed app in `assets/public/icons`, drawn by a browser from `src/desk/art/icon.svg`.
 * A maskable one is cut to any shape by whoever shows it, down to a circle of 80 % of its width (W3C Web Application Manifest,
 * icon masks and safe zone): its ground goes to the edge and its drawing keeps within that circle.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { findBrowser, howToGetBrowser, LAUNCH_ARGS } from './browser.ts';

const DRAWING = 'src/desk/art/icon.svg';
const FOLDER = 'assets/public/icons';
const SIZES = [192, 512];
/** The drawing's furthest ink lies 17.1 units from the middle of its 32; the safe circle's radius is 12.8. */
const WITHIN = 0.74;

export async function main(): Promise<number> {
  const executablePath = findBrowser();
  if (executablePath === undefined) {
    console.error(howToGetBrowser());
    return 2;
  }
  const drawing = readFileSync(DRAWING, 'utf8');
  mkdirSync(FOLDER, { recursive: true });
  const browser = await chromium.launch({ executablePath, args: LAUNCH_ARGS });
  for (const [name, svg] of [
    ['icon', drawing],
    ['maskable', maskable(drawing)],
  ] as const) {
    for (const size of SIZES) {
      const page = await browser.newPage({ viewport: { width: size, height: size }, deviceScaleFactor: 1 });
      await page.setContent(`<style>body{margin:0}svg{display:block;width:100vw;height:100vh}</style>${svg}`);
      const png = await page.screenshot({ omitBackground: true });
      writeFileSync(`${FOLDER}/${name}-${size}.png`, png);
      console.log(`${FOLDER}/${name}-${size}.png, ${png.length} bytes`);
      await page.close();
    }
  }
  await browser.close();
  return 0;
}

function maskable(drawing: string): string {
  const square = drawing.replace(/ rx="\d+"/, '');
  const whole = square.replace('<path ', `<path transform="translate(16 16) scale(${WITHIN}) translate(-16 -16)" `);
  if (square === drawing || whole === square) throw new Error(`${DRAWING} is not a rounded ground and a path any more`);
  return whole;
}
