/**
 * Pictures of screens side by side on one sheet, and how far two such sheets stand apart. The browser itself scales, packs
 * and unpacks them, so nothing else has to know about pictures.
 */
import type { Page } from 'playwright-core';

/** Width of a picture on the sheet, pixels, and how many stand beside each other. */
const CELL = 240;
const BESIDE = 8;
/** Side of the squares whose mean colours are compared, pixels of the sheet: what a packed picture blurs lies within. */
const SQUARE = 6;
/** Two means are apart when a channel differs by more than this, of 255. */
const APART = 14;

export interface Sheet {
  /** Size of every picture. */
  readonly width: number;
  readonly height: number;
}

export interface Gallery {
  /** Hangs a picture in the next free place. */
  hang(png: Buffer): Promise<void>;
  /** The sheet so far, packed as WebP. */
  packed(): Promise<Buffer>;
  /** For every picture that hangs: the share of its squares that are apart from the one in the same place of a packed sheet. */
  apartFrom(packed: Buffer): Promise<readonly number[]>;
}

interface Hung {
  sheet: HTMLCanvasElement;
  count: number;
}
declare global {
  interface Window {
    hung: Hung;
  }
}

/** An empty sheet for so many pictures, in a page of its own. */
export async function openGallery(page: Page, { width, height }: Sheet, many: number): Promise<Gallery> {
  const high = Math.round((CELL * height) / width);
  const size = { cell: CELL, high, beside: BESIDE, square: SQUARE, apart: APART };
  await page.evaluate(
    ({ cell, high, beside, many }) => {
      const sheet = document.createElement('canvas');
      sheet.width = cell * beside;
      sheet.height = high * Math.ceil(many / beside);
      window.hung = { sheet, count: 0 };
    },
    { ...size, many },
  );
  return {
    async hang(png) {
      await page.evaluate(
        async ({ data, cell, high, beside }) => {
          const { sheet, count } = window.hung;
          const image = new Image();
          image.src = data;
          await image.decode();
          const pen = sheet.getContext('2d', { willReadFrequently: true });
          if (pen === null) throw new Error('no canvas');
          pen.imageSmoothingQuality = 'high';
          pen.drawImage(image, (count % beside) * cell, Math.floor(count / beside) * high, cell, high);
          window.hung.count++;
        },
        { ...size, data: `data:image/png;base64,${png.toString('base64')}` },
      );
    },
    async packed() {
      const data = await page.evaluate(() => window.hung.sheet.toDataURL('image/webp', 0.72));
      return Buffer.from(data.slice(data.indexOf(',') + 1), 'base64');
    },
    async apartFrom(packed) {
      return page.evaluate(
        async ({ data, cell, high, beside, square, apart }) => {
          const image = new Image();
          image.src = data;
          await image.decode();
          const { sheet, count } = window.hung;
          const other = document.createElement('canvas');
          other.width = image.width;
          other.height = image.height;
          const [here, there] = [sheet, other].map((one) => one.getContext('2d', { willReadFrequently: true }));
          if (!here || !there) throw new Error('no canvas');
          there.drawImage(image, 0, 0);
          const mean = (data: ImageData, x: number, y: number): readonly number[] => {
            const sum = [0, 0, 0];
            for (let v = y; v < y + square; v++) {
              for (let u = x; u < x + square; u++) {
                for (let c = 0; c < 3; c++) sum[c] = (sum[c] ?? 0) + (data.data[4 * (v * cell + u) + c] ?? 0);
              }
            }
            return sum.map((s) => s / square ** 2);
          };
          return Array.from({ length: count }, (_, i) => {
            const at = [(i % beside) * cell, Math.floor(i / beside) * high, cell, high] as const;
            const [a, b] = [here.getImageData(...at), there.getImageData(...at)];
            let all = 0;
            let differ = 0;
            for (let y = 0; y + square <= high; y += square) {
              for (let x = 0; x + square <= cell; x += square) {
                const before = mean(b, x, y);
                all++;
                if (mean(a, x, y).some((value, c) => Math.abs(value - (before[c] ?? 0)) > apart)) differ++;
              }
            }
            return differ / all;
          });
        },
        { ...size, data: `data:image/webp;base64,${packed.toString('base64')}` },
      );
    },
  };
}
