import { createHash } from 'node:crypto';
import type { ShippedPackage } from '../bundling/shipped-packages.js';

export interface Product {
  readonly name: string;
  readonly version: string;
  readonly description: string;
}

/** What the figures were read from: data, not code. */
export interface DataSource {
  readonly library: string;
  readonly version: string;
  readonly revision: string;
}

/**
 * The bill of materials in CycloneDX 1.6: the product, every library inside the built files, and where the refrigerant
 * data were read. Without time or chance, so that equal contents make equal bytes.
 */
export function billOfMaterials(
  product: Product,
  packages: readonly ShippedPackage[],
  data: DataSource,
  directly: readonly string[],
): string {
  const own = `pkg:npm/${product.name}@${product.version}`;
  const versions = new Map(packages.map(({ name, version }) => [name, version]));
  const reference = (name: string): string => purl(name, versions.get(name) ?? '');
  const dataReference = `pkg:pypi/${data.library.toLowerCase()}@${data.version}`;
  const components = packages.map(({ name, version, licence, integrity }) => ({
    type: 'library',
    'bom-ref': purl(name, version),
    name,
    version,
    scope: 'required',
    hashes: [{ alg: 'SHA-512', content: hexOf(integrity) }],
    licenses: [{ license: { id: licence } }],
    purl: purl(name, version),
  }));
  const body = {
    metadata: {
      component: {
        type: 'application',
        'bom-ref': own,
        name: product.name,
        version: product.version,
        description: product.description,
        licenses: [{ license: { id: 'MIT' } }],
        purl: own,
      },
    },
    components: [
      ...components,
      {
        type: 'data',
        'bom-ref': dataReference,
        name: data.library,
        version: data.version,
        description: `coefficients of published equations, read out of revision ${data.revision}; no code`,
        licenses: [{ license: { id: 'MIT' } }],
        purl: dataReference,
      },
    ],
    dependencies: [
      { ref: own, dependsOn: [...directly.map(reference), dataReference] },
      ...packages.map(({ name, needs }) => ({ ref: reference(name), dependsOn: needs.map(reference) })),
      { ref: dataReference },
    ],
  };
  const head = {
    $schema: 'http://cyclonedx.org/schema/bom-1.6.schema.json',
    bomFormat: 'CycloneDX',
    specVersion: '1.6',
    serialNumber: `urn:uuid:${uuidOf(JSON.stringify(body))}`,
    version: 1,
  };
  return `${JSON.stringify({ ...head, ...body }, null, 2)}\n`;
}

function purl(name: string, version: string): string {
  return `pkg:npm/${name.replace('@', '%40')}@${version}`;
}

/** npm writes checksums in base 64, bills of materials in hexadecimal. */
function hexOf(integrity: string): string {
  const [, base64] = /^sha512-([A-Za-z0-9+/]+=*)$/.exec(integrity) ?? [];
  if (base64 === undefined) throw new Error(`"${integrity}" is no SHA-512 checksum of npm`);
  return Buffer.from(base64, 'base64').toString('hex');
}

/** A UUID made from a text (version 8 of RFC 9562): the same text, the same number. */
function uuidOf(text: string): string {
  const digits = [...createHash('sha256').update(text).digest('hex').slice(0, 32)];
  digits[12] = '8';
  digits[16] = (0x8 | (Number.parseInt(digits[16] ?? '0', 16) & 0x3)).toString(16);
  return digits.join('').replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
