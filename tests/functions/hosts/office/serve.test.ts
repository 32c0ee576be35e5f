import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { get } from 'node:https';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serveOffice, staticFiles } from '../../../../functions/hosts/office/serve.ts';

const folder = mkdtempSync(join(tmpdir(), 'ouncewise-'));
const site = join(folder, 'site');
mkdirSync(join(site, 'guide'), { recursive: true });
writeFileSync(join(folder, 'secret.txt'), 'not for you');
writeFileSync(join(site, 'functions.js'), 'script');
writeFileSync(join(site, 'guide/index.html'), '<p>guide</p>');
symlinkSync(join(folder, 'secret.txt'), join(site, 'link.txt'));

const server = createServer(staticFiles(site));
let port = 0;

beforeAll(async () => {
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  ({ port } = server.address() as AddressInfo);
});
afterAll(() => {
  server.close();
  rmSync(folder, { recursive: true });
});

/** The bare words of a request, so that the path is not tidied up on the way. */
function ask(line: string): Promise<string> {
  return new Promise((done) => {
    const socket = connect(port, '127.0.0.1', () => socket.end(`${line} HTTP/1.0\r\n\r\n`));
    let answer = '';
    socket.on('data', (data) => (answer += data.toString()));
    socket.on('close', () => done(answer));
  });
}

describe('files served for trying the add-in', () => {
  it('come with their kind and may be fetched by Excel’s page', async () => {
    const answer = await ask('GET /functions.js?v=1');
    expect(answer).toMatch(/^HTTP\/1\.\d 200/);
    expect(answer).toMatch(/content-type: text\/javascript/i);
    expect(answer).toMatch(/access-control-allow-origin: \*/i);
    expect(answer).toMatch(/script$/);
    expect(await ask('GET /guide/')).toMatch(/<p>guide<\/p>$/);
    expect(await ask('HEAD /functions.js')).not.toMatch(/script$/);
  });

  it.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/link.txt',
    '/guide',
    '/nothing',
    '/%zz',
    '//',
  ])('do not include %s', async (path) => {
    const answer = await ask(`GET ${path}`);
    expect(answer).not.toMatch(/not for you/);
    expect(answer).toMatch(/^HTTP\/1\.\d 404/);
  });

  it('cannot be changed', async () => {
    expect(await ask('PUT /functions.js')).toMatch(/^HTTP\/1\.\d 405/);
  });
});

describe('over https', () => {
  const openssl = (() => {
    try {
      execFileSync('openssl', ['version'], { stdio: 'ignore' });
      return true;
    } catch {
      return false;
    }
  })();

  it.skipIf(!openssl)('with the certificate the user brings', async () => {
    const [certificatePath, keyPath] = [join(folder, 'cert.pem'), join(folder, 'key.pem')];
    execFileSync(
      'openssl',
      `req -x509 -newkey rsa:2048 -nodes -days 1 -subj /CN=localhost -keyout ${keyPath} -out ${certificatePath}`.split(
        ' ',
      ),
      { stdio: 'ignore' },
    );
    const secure = await serveOffice({ folder: site, certificatePath, keyPath, port: 0 });
    try {
      const { port: securePort, address } = secure.address() as AddressInfo;
      expect(['127.0.0.1', '::1']).toContain(address);
      const body = await new Promise<string>((done, failed) => {
        get(
          { host: 'localhost', port: securePort, path: '/functions.js', rejectUnauthorized: false },
          (response) => {
            let words = '';
            response.on('data', (data: Buffer) => (words += data.toString()));
            response.on('end', () => done(words));
          },
        ).on('error', failed);
      });
      expect(body).toBe('script');
    } finally {
      secure.close();
    }
  });
});
