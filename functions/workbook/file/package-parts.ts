import { FileError } from './file-error.ts';
import { attribute, decodeXml, readXml } from './xml-reader.ts';
import type { ZipArchive } from './zip-archive.ts';

/** A link from one part of a package to another (ECMA-376 Part 2, 9.3). */
export interface Relationship {
  readonly id: string;
  /** Last step of the relationship type, such as "worksheet". */
  readonly kind: string;
  /** Name of the part it leads to, as the archive spells it; undefined when it leads outside or to nothing. */
  readonly part: string | undefined;
}

/** Links of a part; '' stands for the package itself. */
export function readRelationships(archive: ZipArchive, part: string): Relationship[] {
  const slash = part.lastIndexOf('/');
  const folder = part.slice(0, slash + 1);
  const name = archive.findName(`${folder}_rels/${part.slice(slash + 1)}.rels`);
  if (name === undefined) return [];
  const links: Relationship[] = [];
  readXml(decodeXml(archive.read(name), name), name, {
    open(element, attributes) {
      if (element !== 'Relationship') return;
      const kind = attribute(attributes, 'Type') ?? '';
      const target = attribute(attributes, 'Target') ?? '';
      const isOutside = attribute(attributes, 'TargetMode') === 'External';
      links.push({
        id: attribute(attributes, 'Id') ?? '',
        kind: kind.slice(kind.lastIndexOf('/') + 1),
        part: isOutside ? undefined : archive.findName(resolvePath(folder, target)),
      });
    },
  });
  return links;
}

function resolvePath(folder: string, target: string): string {
  const full = target.startsWith('/') ? target.slice(1) : folder + target;
  const steps: string[] = [];
  for (const step of full.split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '.' && step !== '') steps.push(step);
  }
  return steps.join('/');
}

/** Text of a part that must be there. */
export function readPart(archive: ZipArchive, part: string): string {
  return decodeXml(archive.read(part), part);
}

/** The part with the workbook itself. */
export function workbookPart(archive: ZipArchive): string {
  const link = readRelationships(archive, '').find(({ kind }) => kind === 'officeDocument');
  const part = link?.part ?? archive.findName('xl/workbook.xml');
  if (part === undefined) {
    throw new FileError('not-a-workbook', 'the file is an office document but holds no workbook');
  }
  return part;
}
