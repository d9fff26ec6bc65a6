/** Seconds of work of this process since a moment, waiting for others left out. */
export function workedSince(before: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
}
