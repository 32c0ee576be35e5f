import { zipSync } from 'fflate';

/** The same files give the same bytes: sorted names and one fixed time, the earliest that a zip can hold. */
export function pack(files: Readonly<Record<string, Uint8Array>>): Uint8Array {
  const sorted = Object.keys(files)
    .sort()
    .map((name) => [name, files[name] ?? new Uint8Array()] as const);
  return zipSync(Object.fromEntries(sorted), { level: 9, mtime: new Date(1980, 0, 1), os: 0 });
}
