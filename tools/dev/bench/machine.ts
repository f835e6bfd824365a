import os from "node:os";

/** What the numbers were measured on, in one line. */
export function machine(note: string): string {
  const model = os.cpus()[0]?.model.trim() ?? "unknown processor";
  const cores = os.availableParallelism();
  const [load = NaN] = os.loadavg();
  const facts = [
    `${model}, ${String(cores)} cores`,
    `Node ${process.versions.node} on ${os.platform()} ${os.arch()}`,
    `load average ${load.toFixed(1)} when the run began`,
    ...(note === "" ? [] : [note]),
  ];
  return facts.join("; ");
}
