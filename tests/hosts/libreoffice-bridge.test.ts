import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';

test('the parts of the add-in that need no office pass their own tests', () => {
  const folder = join(import.meta.dirname, 'libreoffice');
  const said = execFileSync('/bin/sh', ['-c', '/usr/bin/python3 test_bridge.py 2>&1'], {
    cwd: folder,
    encoding: 'utf8',
  });
  expect(said).toMatch(/Ran (1[5-9]|[2-9]\d) tests[\s\S]*\nOK\n$/);
});
