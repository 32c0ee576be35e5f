import { execFile, spawn } from 'node:child_process';
import type { ChildProcessWithoutNullStreams, SpawnOptions } from 'node:child_process';
import {
  chmodSync,
  chownSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { promisify } from 'node:util';

/**
 * LibreOffice Calc for tests: the real program with a profile of its own, our extension installed in it.
 * For other tests: `recalcInLibreOffice(bytes)` gives every cell as Calc computes it.
 */
export interface CalcCell {
  readonly value?: number | string;
  /** Calc's own error number: 503 #NUM!, 519 #VALUE!, 525 #NAME?, 532 #DIV/0!, 32767 #N/A, 504 wrong parameter list. */
  readonly error?: number;
  readonly formula: string | null;
}

export type CalcSheet = Readonly<Record<string, CalcCell>>;

export const extensionPath = join(import.meta.dirname, '../../dist/libreoffice/ouncewise.oxt');

/** Debian's Python has `uno`; one from elsewhere usually has not. */
const python = '/usr/bin/python3';
const nobody = 65_534;
const run = promisify(execFile);

export interface CalcOptions {
  readonly extension?: string;
  /** Added to the environment of the office, such as OUNCEWISE_NODE. */
  readonly environment?: Readonly<Record<string, string>>;
  /** Contents of the settings file; a `node` that is one of `programs` is completed to its path. */
  readonly settings?: { readonly node?: string; readonly timeout_seconds?: number };
  /** Scripts to put into the profile's folder. */
  readonly programs?: Readonly<Record<string, string>>;
  /** False: what a fresh installation does with files of other programs, which is to trust the saved values. */
  readonly recalculateOnLoad?: boolean;
}

/** A fresh profile with the extension installed; `unopkg` refuses to work for root, so root steps down. */
export class CalcProfile {
  readonly folder = mkdtempSync(join(tmpdir(), 'ouncewise-calc-'));
  private readonly environment: NodeJS.ProcessEnv;

  private constructor(options: CalcOptions) {
    this.environment = { ...process.env, HOME: this.folder, ...options.environment };
    delete this.environment.NODE_OPTIONS;
  }

  static async create(options: CalcOptions = {}): Promise<CalcProfile> {
    const profile = new CalcProfile(options);
    const user = join(profile.folder, 'profile/user');
    mkdirSync(join(user, 'ouncewise'), { recursive: true });
    if (options.recalculateOnLoad !== false) {
      writeFileSync(join(user, 'registrymodifications.xcu'), alwaysRecalculate);
    }
    for (const [name, script] of Object.entries(options.programs ?? {})) {
      writeFileSync(join(profile.folder, name), script, { mode: 0o755 });
    }
    if (options.settings !== undefined) {
      const { node } = options.settings;
      const isProgram = node !== undefined && options.programs?.[node] !== undefined;
      const settings = { ...options.settings, node: isProgram ? join(profile.folder, node) : node };
      writeFileSync(join(user, 'ouncewise/settings.json'), JSON.stringify(settings));
    }
    writeFileSync(join(profile.folder, 'ouncewise.oxt'), readFileSync(options.extension ?? extensionPath));
    await profile.handOver();
    await profile.unopkg('add', '--suppress-license', join(profile.folder, 'ouncewise.oxt'));
    return profile;
  }

  async unopkg(...args: string[]): Promise<string> {
    const { stdout } = await run(
      'unopkg',
      [args[0] ?? '', this.profileArgument(), ...args.slice(1)],
      this.spawning(),
    );
    return stdout;
  }

  /** Plain conversion by the command line, as a user would do it; the path of the result. */
  async convert(bytes: Uint8Array, from: string, to: string): Promise<string> {
    const input = this.place(`convert.${from}`, bytes);
    const output = join(this.folder, 'converted');
    const args = [
      this.profileArgument(),
      '--headless',
      '--norestore',
      '--convert-to',
      to,
      '--outdir',
      output,
      input,
    ];
    await run('soffice', args, { ...this.spawning(), timeout: 120_000 });
    return join(output, `convert.${to}`);
  }

  /** Writes a file the office may read. */
  place(name: string, bytes: Uint8Array): string {
    const path = join(this.folder, name);
    writeFileSync(path, bytes);
    chmodSync(path, 0o644);
    return path;
  }

  spawning(): SpawnOptions & { cwd: string } {
    const who = process.getuid?.() === 0 ? { uid: nobody, gid: nobody } : {};
    return { env: this.environment, cwd: this.folder, ...who };
  }

  profileArgument(): string {
    return `-env:UserInstallation=file://${this.folder}/profile`;
  }

  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }

  private async handOver(): Promise<void> {
    if (process.getuid?.() !== 0) return;
    chownSync(this.folder, nobody, nobody);
    await run('chown', ['-R', `${nobody}:${nobody}`, this.folder]);
  }
}

const alwaysRecalculate = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="ODFRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>
`;

const filters = { xlsx: 'Calc MS Excel 2007 XML', ods: 'calc8' } as const;

/** A running office. Close it, or it lives on. */
export class Calc {
  readonly profile: CalcProfile;
  private readonly office: ReturnType<typeof spawn>;
  private readonly driver: ChildProcessWithoutNullStreams;
  private readonly answers: ((line: string) => void)[] = [];

  private constructor(
    profile: CalcProfile,
    office: ReturnType<typeof spawn>,
    driver: ChildProcessWithoutNullStreams,
  ) {
    this.profile = profile;
    this.office = office;
    this.driver = driver;
    createInterface({ input: driver.stdout }).on('line', (line) => this.answers.shift()?.(line));
  }

  static async open(options: CalcOptions = {}): Promise<Calc> {
    return Calc.start(await CalcProfile.create(options));
  }

  private static async start(profile: CalcProfile): Promise<Calc> {
    const pipe = profile.folder.split('/').at(-1) ?? '';
    const office = spawn(
      'soffice',
      [profile.profileArgument(), '--headless', '--norestore', `--accept=pipe,name=${pipe};urp`],
      { ...profile.spawning(), stdio: 'ignore', detached: true },
    );
    const script = profile.place('drive.py', readFileSync(join(import.meta.dirname, 'libreoffice/drive.py')));
    const driver = spawn(python, [script, pipe], {
      ...profile.spawning(),
      stdio: 'pipe',
    });
    let complaint = '';
    driver.stderr.on('data', (data: Buffer) => (complaint += data.toString()));
    const calc = new Calc(profile, office, driver);
    await new Promise<void>((resolve, reject) => {
      driver.once('exit', () => reject(new Error(`the office did not start: ${complaint}`)));
      calc.answers.push(() => resolve());
    });
    return calc;
  }

  /** Every filled cell by sheet and address, hard recalculated unless `hard` is false. */
  async recalc(
    bytes: Uint8Array,
    { hard = true, name = 'book.xlsx' } = {},
  ): Promise<Record<string, CalcSheet>> {
    return (await this.ask('recalc', this.profile.place(name, bytes), hard)) as Record<string, CalcSheet>;
  }

  /** A new sheet with these contents; "=…" is a formula with semicolons between arguments. Ranges in `fill` repeat their first row. */
  async evaluate(
    cells: Readonly<Record<string, number | string>>,
    arrays: Readonly<Record<string, string>> = {},
    fill: readonly string[] = [],
  ): Promise<{ cells: CalcSheet; seconds: number }> {
    return (await this.ask('evaluate', cells, arrays, fill)) as never;
  }

  /** Opens a file and saves it in another format, as File > Save As does; the path of the result. */
  async convertFile(bytes: Uint8Array, from: 'xlsx' | 'ods', to: 'xlsx' | 'ods'): Promise<string> {
    const input = this.profile.place(`from.${from}`, bytes);
    const output = join(this.profile.folder, `saved.${to}`);
    await this.ask('convert', input, output, filters[to]);
    return output;
  }

  async describe(): Promise<Record<string, WizardHelp>> {
    return (await this.ask('describe')) as never;
  }

  /** What Tools > Add-Ons > Ouncewise shows. */
  async report(): Promise<string> {
    return (await this.ask('report')) as string;
  }

  /** Process ids of the Node children of this office. */
  async nodeChildren(): Promise<number[]> {
    const { stdout } = await run('ps', ['-eo', 'pid=,args=']);
    return stdout
      .split('\n')
      .filter((line) => line.includes(`${this.profile.folder}/`) && line.includes('server.cjs'))
      .map((line) => Number.parseInt(line, 10));
  }

  /** The office once more in the same profile. */
  restart(): Promise<Calc> {
    return Calc.start(this.profile);
  }

  async close(): Promise<void> {
    await this.stop();
    this.profile.remove();
  }

  /** Ends the office; the profile stays. */
  async stop(): Promise<void> {
    this.driver.stdin.end();
    const gone = new Promise((resolve) => this.office.once('exit', resolve));
    // soffice is a script around the program: the whole group ends.
    if (this.office.pid !== undefined) process.kill(-this.office.pid, 'SIGTERM');
    await Promise.race([gone, new Promise((resolve) => setTimeout(resolve, 10_000))]);
  }

  private async ask(what: string, ...args: unknown[]): Promise<unknown> {
    const line = await new Promise<string>((resolve, reject) => {
      const gone = (): void => reject(new Error('the office is gone'));
      this.driver.once('exit', gone);
      this.answers.push((text) => {
        this.driver.off('exit', gone);
        resolve(text);
      });
      this.driver.stdin.write(`${JSON.stringify({ do: what, with: args })}\n`);
    });
    const { answer, fault } = JSON.parse(line) as { answer?: unknown; fault?: string };
    if (fault !== undefined) throw new Error(fault);
    return answer;
  }
}

export interface WizardHelp {
  readonly description: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly description: string;
    readonly optional: boolean;
  }[];
}

/** True when LibreOffice, its Python and the built extension are here. */
export function libreOfficeIsHere(): boolean {
  // On CI it has to be there: nothing is skipped in silence.
  if (process.env.CI !== undefined) return true;
  return existsSync('/usr/bin/soffice') && existsSync(python) && existsSync(extensionPath);
}

let shared: Promise<Calc> | undefined;

/** Every cell of an .xlsx as Calc computes it with our extension, in one office shared by the tests of a file. */
export async function recalcInLibreOffice(bytes: Uint8Array): Promise<Record<string, CalcSheet>> {
  shared ??= Calc.open();
  return (await shared).recalc(bytes);
}

/** Call it in `afterAll` when `recalcInLibreOffice` was used. */
export async function closeLibreOffice(): Promise<void> {
  const calc = await shared;
  shared = undefined;
  await calc?.close();
}
