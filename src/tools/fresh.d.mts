/** Whether `output` exists and nothing under `inputs` (files or folders) changed after it was made. */
export function isFresh(output: string, inputs: readonly string[]): boolean;
