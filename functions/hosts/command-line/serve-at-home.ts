import type { Server } from 'node:http';
import { isServedAt, servePage } from '../page/server/serve.ts';
import type { ServedFiles } from '../page/server/serve.ts';
import { UsageError } from './usage-error.ts';

/**
 * Where the page is served unless told otherwise, best first. A browser keeps a page's work by its address, port included:
 * at another port it finds nothing of what was typed before. Registered to nobody; from memory.
 */
export const homePorts = [41_680, 41_681, 41_682, 41_683, 41_684] as const;

export interface HomeServer {
  readonly address: string;
  /** Undefined when the page is served already, by another start. */
  readonly server: Server | undefined;
  /** What is to be told beside the address; empty when all is as usual. */
  readonly words: string;
}

/** @throws UsageError when a port that was asked for cannot be had */
export async function serveAtHome(
  files: Omit<ServedFiles, 'port'>,
  asked: number | undefined,
  ports: readonly number[] = homePorts,
): Promise<HomeServer> {
  const [usual] = ports;
  for (const port of asked === undefined ? ports : [asked]) {
    try {
      const { address, server } = await servePage({ ...files, port });
      const words =
        asked === undefined && port !== usual
          ? `\nPort ${String(usual)}, its usual place, is taken by another program. What the browser kept of your work there is not seen at port ${port}: end that program and start again to find it.`
          : '';
      return { address, server, words };
    } catch (problem) {
      const { code } = problem as NodeJS.ErrnoException;
      if (code === 'EACCES' && asked !== undefined) {
        throw new UsageError(`port ${port} may not be used; name one above 1023`);
      }
      if (code !== 'EADDRINUSE' && code !== 'EACCES') throw problem;
      if (asked !== undefined) throw new UsageError(`port ${port} is in use; name another one`);
      const address = await isServedAt(port);
      if (address !== undefined) {
        return {
          address,
          server: undefined,
          words: '\nIt is served already, by another start that still runs.',
        };
      }
    }
  }
  throw new UsageError(`ports ${ports.join(', ')} are all in use; name another one with --port`);
}
