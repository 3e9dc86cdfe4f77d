/** Records of a class, replayed and put on one sheet. */
export * from './class-csv.ts';
export * from './class-sheet.ts';
export * from './marked.ts';
export * from './regret.ts';
export * from './reviewed.ts';
