import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';

/** One line of the table in NOTICES.md that says where figures come from. */
export interface ProvenanceRule {
  /** Paths with `*` for any name and `{a,b}` for either. */
  readonly files: string;
  readonly source: string;
  readonly madeBy: string;
}

export interface ProvenanceEntry {
  readonly file: string;
  readonly rules: readonly ProvenanceRule[];
}

/** Folders that hold figures. Other folders hold programs, with single figures beside their use. */
const figureFolders = ['src/data', 'tests/standards', 'tests/golden', 'sample-workbooks', 'manifest/guides'];
const figureFiles =
  /\.(csv|json|bib|xlsx|png|txt)$|^src\/data\/[^/]+\/[^/]+\.ts$|^src\/data\/(packed|provenance)\.ts$/;
const programs = /^src\/data\/tools\/.*\.(ts|py)$/;
/** Beside the folders: tables of figures inside the program, and what they are fitted to. */
const tables = [
  'src/visit/target-split-table.ts',
  'src/visit/target-superheat-table.ts',
  'src/data/confirmed-facts.ts',
  'src/data/estimate-doubts.ts',
  'src/visit/diagnosis/response-table.ts',
  'tests/visit/simulated/simulated-units.csv.gz',
  'tests/visit/simulated/published-measurements.csv',
];

export function provenanceRules(notices: string): readonly ProvenanceRule[] {
  const section = notices.split('## Where every figure comes from')[1]?.split('\n## ')[0] ?? '';
  return [...section.matchAll(/^\| `([^`]+)` *\| (.+?) *\| (.+?) *\|$/gm)].map(
    ([, files = '', source = '', madeBy = '']) => ({ files, source, madeBy: madeBy.replaceAll('`', '') }),
  );
}

/** Every file of figures with the rules that cover it: exactly one when all is well. */
export function provenanceOf(root: string, rules: readonly ProvenanceRule[]): readonly ProvenanceEntry[] {
  const files = figureFolders.flatMap((folder) => filesBelow(root, folder));
  return [...files.filter((file) => figureFiles.test(file) && !programs.test(file)), ...tables]
    .sort()
    .map((file) => ({ file, rules: rules.filter((rule) => pattern(rule.files).test(file)) }));
}

/** PROVENANCE.csv. @throws when a file of figures has no line in NOTICES.md, or two. */
export function provenanceText(root: string): string {
  const rules = provenanceRules(readFileSync(join(root, 'NOTICES.md'), 'utf8'));
  const rows = provenanceOf(root, rules).map(({ file, rules: found }) => {
    const [rule] = found;
    if (rule === undefined || found.length > 1)
      throw new Error(`${file} must be in one line of NOTICES.md; it is in ${found.length}`);
    const sha256 = createHash('sha256')
      .update(readFileSync(join(root, file)))
      .digest('hex');
    return [file, sha256, rule.source, rule.madeBy].map(quoted).join(',');
  });
  return ['file,sha256,source,made by', ...rows, ''].join('\n');
}

function filesBelow(root: string, folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !/__pycache__|^[.~]/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name).slice(root.length + 1))
    .map((path) => path.split(sep).join('/'));
}

function pattern(files: string): RegExp {
  const words = files
    .replace(/[.+^$()|[\]\\]/g, '\\$&')
    .replace(/\{([^}]+)\}/g, (_, names: string) => `(${names.replaceAll(',', '|')})`)
    .replaceAll('*', '[^/]*');
  return new RegExp(`^${words}$`);
}

function quoted(text: string): string {
  return /[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
