import { visitLog } from '../../../src/records/index.ts';
import type { GatheredLogs } from './gather-contents.ts';

/** How much was gathered, as the overview says it below its title. */
export function gatheredText({ gathering, filesRead }: GatheredLogs, leftOut: number): string {
  const sets = gathering.rows(visitLog).length;
  const files = (count: number): string => `${count} ${count === 1 ? 'file' : 'files'}`;
  const parts = [files(filesRead), `${sets} sets of readings`];
  if (gathering.repeated > 0) parts.push(`${gathering.repeated} repeated rows counted once`);
  if (gathering.conflicts.length > 0) parts.push(`${gathering.conflicts.length} conflicts`);
  if (leftOut > 0) parts.push(`${files(leftOut)} left out`);
  return parts.join(', ');
}
