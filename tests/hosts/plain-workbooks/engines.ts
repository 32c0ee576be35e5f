import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pythonWithEngines } from '../../bench/workbook/engines/environment.ts';

/** Cells of one workbook by "Sheet!A1", as a program worked them out. */
export type Worked = Readonly<Record<string, number | string | boolean | null>>;

const here = import.meta.dirname;

/** A folder with workbooks that carry no saved values, worked out by programs that know nothing of us. */
export class PlainWorkbooks {
  readonly folder = mkdtempSync(join(tmpdir(), 'ouncewise-plain-'));
  readonly names: readonly string[];

  constructor(files: readonly Uint8Array[]) {
    this.names = files.map((bytes, index) => {
      const name = `v${String(index).padStart(2, '0')}.xlsx`;
      writeFileSync(join(this.folder, name), bytes);
      return name;
    });
  }

  /** LibreOffice in a profile of its own, without any extension. */
  byLibreOffice(): readonly string[] {
    const saved = this.#saved('libreoffice');
    const profile = join(this.folder, 'profile');
    execFileSync(
      'soffice',
      [
        `-env:UserInstallation=file://${profile}`,
        '--headless',
        '--norestore',
        '--convert-to',
        'xlsx',
        '--outdir',
        saved,
        ...this.names.map((name) => join(this.folder, name)),
      ],
      { stdio: 'ignore', timeout: 160_000 },
    );
    return this.names.map((name) => join(saved, name));
  }

  byGnumeric(): readonly string[] {
    const saved = this.#saved('gnumeric');
    return this.names.map((name) => {
      execFileSync('ssconvert', ['--recalc', join(this.folder, name), join(saved, name)], {
        stdio: 'ignore',
      });
      return join(saved, name);
    });
  }

  /** A native engine from PyPI; see tests/bench/workbook/engines. */
  byEngine(
    id: 'formualizer' | 'ironcalc',
    cells: readonly (readonly string[])[],
    sheets: readonly (readonly string[])[],
  ): readonly Worked[] {
    const job = this.names.map((name, index) => ({
      file: join(this.folder, name),
      cells: cells[index] ?? [],
      sheets: sheets[index] ?? [],
    }));
    const out = execFileSync(pythonWithEngines(), [join(here, 'work-out.py'), id], {
      input: JSON.stringify(job),
      maxBuffer: 200_000_000,
    });
    return JSON.parse(out.toString()) as Worked[];
  }

  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }

  #saved(name: string): string {
    const folder = join(this.folder, name);
    mkdirSync(folder, { recursive: true });
    return folder;
  }
}
