// Written by src/data/tools/extract.py (`npm run extract`); do not edit. Coefficients: see `source` in references.bib.

/** Which build of the library the coefficients were read from. */
export const provenance = {
  library: 'CoolProp',
  version: '8.0.0',
  revision: 'ae81610e7d23efc57f9d051c8e70a4d66e87537f',
  extensionSha256: '6256aef30ebcc9a71ea5304b320c04223f3056a33d74fadfff361c22445f95ec',
} as const;
