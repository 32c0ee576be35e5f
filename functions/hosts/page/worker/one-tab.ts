/** A log is open in one tab at a time: whoever holds its lock may write it. Locks end with the tab that holds them. */
const prefix = 'ouncewise-log-';
let release: (() => void) | undefined;

/** Takes the lock of a log, letting go of the one held before. Waits a little, since a reloading tab lets go late. */
export async function takeLog(id: string, patienceMs: number): Promise<boolean> {
  const deadline = Date.now() + patienceMs;
  for (;;) {
    if (await tryToTake(id)) return true;
    if (Date.now() >= deadline) return false;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}

function tryToTake(id: string): Promise<boolean> {
  return new Promise((resolve, reject) => {
    navigator.locks
      .request(prefix + id, { ifAvailable: true }, (lock) => {
        if (lock === null) {
          resolve(false);
          return undefined;
        }
        release?.();
        resolve(true);
        return new Promise<void>((letGo) => (release = letGo));
      })
      .catch(reject);
  });
}

/** Logs open in some tab. */
export async function takenLogs(): Promise<ReadonlySet<string>> {
  const { held = [] } = await navigator.locks.query();
  return new Set(held.map(({ name = '' }) => name.slice(prefix.length)));
}
