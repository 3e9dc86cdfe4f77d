/** Hands a value over to the browser's downloads as a JSON file. */
export function handOver(fileName: string, value: unknown): void {
  handOverText(fileName, `${JSON.stringify(value, null, 2)}\n`, 'application/json');
}

/** Hands a text over to the browser's downloads. */
export function handOverText(fileName: string, text: string, type: string): void {
  handOverFile(fileName, new Blob([text], { type }));
}

/** Hands a file over to the browser's downloads. */
export function handOverFile(fileName: string, file: Blob): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = fileName;
  link.click();
  // The download holds the blob by now; a browser that is slow to start it still has a minute.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
