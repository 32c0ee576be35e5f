import { execFile } from 'node:child_process';
import { chmodSync, chownSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';

const run = promisify(execFile);
const nobody = 65_534;

/** Calc keeps saved values unless told to recalculate what it opens. */
const alwaysRecalculate = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="ODFRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;

/** The workbook as a fresh LibreOffice recalculates and saves it, as .xlsx or .ods. */
export async function recalculateInCalc(
  bytes: Uint8Array,
  kind: 'xlsx' | 'ods' = 'xlsx',
): Promise<Uint8Array> {
  const folder = mkdtempSync(join(tmpdir(), 'calc-recalculation-'));
  try {
    const user = join(folder, 'profile/user');
    mkdirSync(user, { recursive: true });
    writeFileSync(join(user, 'registrymodifications.xcu'), alwaysRecalculate);
    writeFileSync(join(folder, 'in.xlsx'), bytes);
    const isRoot = process.getuid?.() === 0;
    if (isRoot) {
      for (const path of [
        '.',
        'profile',
        'profile/user',
        'profile/user/registrymodifications.xcu',
        'in.xlsx',
      ]) {
        chownSync(join(folder, path), nobody, nobody);
      }
      chmodSync(folder, 0o755);
    }
    await run(
      'soffice',
      [
        `-env:UserInstallation=file://${folder}/profile`,
        '--headless',
        '--norestore',
        '--convert-to',
        kind,
        '--outdir',
        join(folder, 'out'),
        join(folder, 'in.xlsx'),
      ],
      {
        cwd: folder,
        timeout: 150_000,
        env: { ...process.env, HOME: folder },
        ...(isRoot ? { uid: nobody, gid: nobody } : {}),
      },
    );
    return new Uint8Array(readFileSync(join(folder, `out/in.${kind}`)));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
