/** Largest sizes of what users download, in bytes. A build that grows past one fails its test: argue, then raise it here. */
export const budget = {
  /** Excel loads it in every workbook with our functions. */
  'office/functions.js': { bytes: 460_000, compressedBytes: 155_000 },
  /** Pasted by hand; Apps Script parses it for every formula. */
  'apps-script/ouncewise.gs': { bytes: 580_000, compressedBytes: 175_000 },
  'onlyoffice/ouncewise-onlyoffice.js': { bytes: 580_000, compressedBytes: 175_000 },
} as const;
