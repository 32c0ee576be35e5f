/// <reference lib="dom" />

declare const OUNCEWISE_BUILD: string;
declare const OUNCEWISE_PAGE_FILES: readonly string[];

interface ExtendableEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}

interface FetchEvent extends ExtendableEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

interface ServiceWorkerScope {
  readonly location: Location;
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', listener: (event: ExtendableEvent) => void): void;
  addEventListener(type: 'fetch', listener: (event: FetchEvent) => void): void;
}

const scope = globalThis as unknown as ServiceWorkerScope;
const storeName = `ouncewise-page-${OUNCEWISE_BUILD}`;

/** The page after its first visit, without its server: every file of this build is kept. */
scope.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(storeName)
      .then((store) =>
        store.addAll(OUNCEWISE_PAGE_FILES.map((file) => new Request(file, { cache: 'reload' }))),
      )
      .then(() => scope.skipWaiting()),
  );
});

scope.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) =>
        Promise.all(
          names
            .filter((name) => name.startsWith('ouncewise-page-') && name !== storeName)
            .map((name) => caches.delete(name)),
        ),
      )
      .then(() => scope.clients.claim()),
  );
});

// The server's answer first, so that a new build is seen at once; the kept one when there is no server.
scope.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== scope.location.origin) return;
  event.respondWith(
    fetch(request).catch(async (problem: unknown) => {
      const kept = await caches.match(request, { ignoreSearch: true });
      if (kept === undefined) throw problem;
      return kept;
    }),
  );
});
