/**
 * The bridge between the pane and the functions of the same page. functions.js reports each function in to the host and
 * exposes nothing else, so a small script before it listens in; the pane then calls a function to learn its refusal.
 */

import type { Associated } from "./reason";

declare const CustomFunctions: { associate: (...reported: unknown[]) => void } | undefined;

const page = globalThis as { ringbeadFunctions?: Map<string, Associated> };

/** Runs between office.js and functions.js. The host hears every report first and unchanged. */
export function listenIn(): void {
  if (typeof CustomFunctions === "undefined") return;
  const heard = (page.ringbeadFunctions ??= new Map<string, Associated>());
  const host = CustomFunctions;
  const { associate } = host;
  host.associate = (...reported) => {
    associate.apply(host, reported);
    const [id, reportedFunction] = reported;
    if (typeof id === "string" && typeof reportedFunction === "function") {
      heard.set(id, reportedFunction as Associated);
    }
  };
}

export function functionsHeard(): ReadonlyMap<string, Associated> {
  return page.ringbeadFunctions ?? new Map<string, Associated>();
}
