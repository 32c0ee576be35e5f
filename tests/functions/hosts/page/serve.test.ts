import { request } from 'node:http';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { servePage } from '../../../../functions/hosts/page/server/serve.ts';
import type { PageServer } from '../../../../functions/hosts/page/server/serve.ts';

let served: PageServer;
const folder = mkdtempSync(join(tmpdir(), 'ouncewise-page-'));

beforeAll(async () => {
  writeFileSync(join(folder, 'index.html'), '<p>page</p>');
  writeFileSync(join(folder, 'secret.txt'), 'no');
  served = await servePage({ folder, texts: { 'guide/index.html': 'guide' }, port: 0 });
});

afterAll(() => {
  served.server.close();
  rmSync(folder, { recursive: true });
});

function ask(
  path: string,
  options: { host?: string; method?: string } = {},
): Promise<{ status: number; policy: string; body: string }> {
  const { hostname, port } = new URL(served.address);
  return new Promise((resolve, reject) => {
    const asked = request(
      {
        hostname,
        port,
        path,
        method: options.method ?? 'GET',
        headers: { host: options.host ?? `127.0.0.1:${port}` },
      },
      (answer) => {
        let body = '';
        answer.on('data', (piece: Buffer) => (body += piece.toString()));
        answer.on('end', () =>
          resolve({
            status: answer.statusCode ?? 0,
            policy: String(answer.headers['content-security-policy']),
            body,
          }),
        );
      },
    );
    asked.on('error', reject);
    asked.end();
  });
}

test('listens on this computer only and sends a policy without eval or inline script', async () => {
  const address = served.server.address();
  expect(typeof address === 'object' ? address?.address : address).toBe('127.0.0.1');
  const { status, policy, body } = await ask('/');
  expect(status).toBe(200);
  expect(body).toBe('<p>page</p>');
  expect(policy).toContain("script-src 'self'");
  expect(policy).not.toMatch(/unsafe|\*|https?:/);
  expect((await ask('/guide/index.html?x=1')).body).toBe('guide');
});

test.each([
  ['/../package.json', 404],
  ['/%2e%2e/package.json', 404],
  ['/..%2fpackage.json', 404],
  ['/secret.txt', 404],
  ['/missing.js', 404],
  ['/__proto__.html', 404],
])('%s is answered with %i', async (path, status) => {
  expect((await ask(path)).status).toBe(status);
});

test('another site that points its name here is turned away, and so is writing', async () => {
  expect((await ask('/', { host: 'example.org' })).status).toBe(403);
  expect((await ask('/', { method: 'POST' })).status).toBe(405);
});
