import os from "node:os";

/**
 * What the numbers were measured on, in one line.
 * @param {string} note
 */
export function machine(note) {
  const model = os.cpus()[0]?.model.trim() ?? "unknown processor";
  const cores = os.availableParallelism();
  const [load = NaN] = os.loadavg();
  const facts = [
    `${model}, ${cores} cores`,
    `Node ${process.versions.node} on ${os.platform()} ${os.arch()}`,
    `load average ${load.toFixed(1)} when the run began`,
    ...(note === "" ? [] : [note]),
  ];
  return facts.join("; ");
}
