/** Milliseconds of processor time that work takes: other work of the machine does not count. */
export function processorMs(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}
