import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { IncomingMessage, Server, ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';

/** Only this computer may ask. */
const host = '127.0.0.1';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
};

const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

export interface PageServer {
  readonly address: string;
  readonly server: Server;
}

export interface ServedFiles {
  /** Folder of the built page. */
  readonly folder: string;
  /** Texts served beside it, by path without the leading slash. */
  readonly texts: Readonly<Record<string, string>>;
  /** 0: any free port. */
  readonly port: number;
}

/** Serves the page to this computer alone. Plain paths only: no query, no "..", nothing but the listed kinds of file. */
export function servePage({ folder, texts, port }: ServedFiles): Promise<PageServer> {
  const server = createServer((request, response) => {
    answer(request, response, folder, texts).catch(() => {
      response.writeHead(500).end();
    });
  });
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      const { port: actual } = server.address() as AddressInfo;
      resolve({ address: `http://${host}:${actual}/`, server });
    });
  });
}

/** The address of the page when a server like this one answers at a port of this computer; undefined otherwise. */
export async function isServedAt(port: number): Promise<string | undefined> {
  const address = `http://${host}:${port}/`;
  try {
    const answered = await fetch(`${address}page.webmanifest`, { signal: AbortSignal.timeout(1500) });
    if (!answered.ok) return undefined;
    const { name } = (await answered.json()) as { name?: unknown };
    return name === 'Ouncewise' ? address : undefined;
  } catch {
    return undefined;
  }
}

async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  folder: string,
  texts: Readonly<Record<string, string>>,
): Promise<void> {
  response.setHeader('Content-Security-Policy', policy);
  response.setHeader('X-Content-Type-Options', 'nosniff');
  response.setHeader('Referrer-Policy', 'no-referrer');
  response.setHeader('Cross-Origin-Opener-Policy', 'same-origin');
  response.setHeader('Cross-Origin-Resource-Policy', 'same-origin');
  response.setHeader('Cache-Control', 'no-cache');
  // A page of another site that points its own name at this computer is not answered.
  const name = (request.headers.host ?? '').replace(/:\d+$/, '');
  if (name !== host && name !== 'localhost') {
    response.writeHead(403).end();
    return;
  }
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { Allow: 'GET, HEAD' }).end();
    return;
  }
  const path = (request.url ?? '/').split('?')[0]?.slice(1) ?? '';
  const wanted = path === '' ? 'index.html' : path;
  const type = types[extname(wanted)];
  if (type === undefined || !/^[\w-]+(?:[./][\w-]+)*$/.test(wanted)) {
    response.writeHead(404).end();
    return;
  }
  const content = Object.hasOwn(texts, wanted)
    ? Buffer.from(texts[wanted] ?? '')
    : await readFile(join(folder, wanted)).catch(() => undefined);
  if (content === undefined) {
    response.writeHead(404).end();
    return;
  }
  response.writeHead(200, { 'Content-Type': type, 'Content-Length': content.length });
  response.end(request.method === 'HEAD' ? undefined : content);
}
