import { readFileSync, realpathSync, statSync } from 'node:fs';
import type { RequestListener } from 'node:http';
import type { Server } from 'node:https';
import { createServer } from 'node:https';
import { extname, join, resolve, sep } from 'node:path';

const kinds: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.xml': 'application/xml; charset=utf-8',
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
};

/** Answers GET and HEAD with the files of one folder, and nothing from outside it. */
export function staticFiles(folder: string): RequestListener {
  const root = realpathSync(resolve(folder));
  return (request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { Allow: 'GET, HEAD' }).end();
      return;
    }
    const path = fileFor(root, request.url ?? '/');
    if (path === undefined) {
      response.writeHead(404, { 'Content-Type': 'text/plain' }).end('not here\n');
      return;
    }
    response.writeHead(200, {
      'Content-Type': kinds[extname(path)] ?? 'application/octet-stream',
      // Excel on the web fetches functions.json and functions.js from its own page.
      'Access-Control-Allow-Origin': '*',
      'Cache-Control': 'no-cache',
    });
    response.end(request.method === 'HEAD' ? undefined : readFileSync(path));
  };
}

function fileFor(root: string, url: string): string | undefined {
  try {
    const wanted = decodeURIComponent(new URL(url, 'https://localhost').pathname);
    const path = realpathSync(join(root, wanted.endsWith('/') ? `${wanted}index.html` : wanted));
    return path.startsWith(root + sep) && statSync(path).isFile() ? path : undefined;
  } catch {
    return undefined;
  }
}

/** Serves an add-in folder on this computer only, with a certificate the user has made and trusts. */
export function serveOffice(options: {
  readonly folder: string;
  readonly certificatePath: string;
  readonly keyPath: string;
  readonly port: number;
}): Promise<Server> {
  const server = createServer(
    { cert: readFileSync(options.certificatePath), key: readFileSync(options.keyPath) },
    staticFiles(options.folder),
  );
  return new Promise((started, failed) => {
    server.once('error', failed);
    server.listen(options.port, 'localhost', () => started(server));
  });
}
