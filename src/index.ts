/** The calculation package: SI in, SI out; no spreadsheet needed. */
export * from './errors.ts';
export * from './phrase.ts';
export * from './verdict-words.ts';
export * from './refrigerants/index.ts';
export * from './air/index.ts';
export * from './visit/index.ts';
export * from './charge/index.ts';
export * from './access/index.ts';
export * from './leak/index.ts';
export * from './cost/index.ts';
export * from './records/index.ts';
