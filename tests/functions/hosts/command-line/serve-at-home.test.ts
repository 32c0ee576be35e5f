import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serveAtHome } from '../../../../functions/hosts/command-line/serve-at-home.ts';

const folder = mkdtempSync(join(tmpdir(), 'ouncewise-home-'));
const files = { folder, texts: {} };
const other = createServer((_request, response) => response.writeHead(404).end());
let taken = 0;

beforeAll(async () => {
  writeFileSync(join(folder, 'page.webmanifest'), '{ "name": "Ouncewise" }');
  await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
  taken = (other.address() as AddressInfo).port;
});

afterAll(() => {
  other.close();
  rmSync(folder, { recursive: true });
});

test('another program at the usual port is told, and the next port taken', async () => {
  const { address, server, words } = await serveAtHome(files, undefined, [taken, 0]);
  expect(address).not.toContain(`:${String(taken)}/`);
  expect(words).toContain(String(taken));
  server?.close();
});

test('a page that is served already is named instead of served twice', async () => {
  const first = await serveAtHome(files, 0);
  const port = Number(new URL(first.address).port);
  const second = await serveAtHome(files, undefined, [port]);
  expect(second).toMatchObject({ address: first.address, server: undefined });
  first.server?.closeAllConnections();
  first.server?.close();
  // Ended and started again, it stands where it stood: the browser finds what it kept.
  const third = await serveAtHome(files, undefined, [port]);
  expect(third.address).toBe(first.address);
  third.server?.close();
});

test('a port that was asked for and is taken is refused by number', async () => {
  await expect(serveAtHome(files, taken)).rejects.toThrow(`port ${String(taken)} is in use`);
});
