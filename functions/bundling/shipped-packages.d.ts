export interface ShippedPackage {
  readonly name: string;
  readonly version: string;
  /** Of the package file, as npm checks it: `sha512-…` in base 64. */
  readonly integrity: string;
  /** SPDX identifier. */
  readonly licence: string;
  readonly needs: readonly string[];
}

export const bundledLibraries: readonly string[];
export function shippedPackages(root: string, libraries?: readonly string[]): ShippedPackage[];
export function notPermissive(packages: readonly ShippedPackage[]): ShippedPackage[];
export function librariesOf(paths: readonly string[]): string[];
export class KnownLibrariesOnly {
  constructor(root: string);
  apply(compiler: unknown): void;
}
