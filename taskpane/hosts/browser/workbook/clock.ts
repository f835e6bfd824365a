/** A time as the person's own clock tells it; of another day with its date. */

export function clockTime(at: number): string {
  const then = new Date(at);
  const time = then.toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
  return then.toDateString() === new Date().toDateString() ? time : `${then.toLocaleDateString()} ${time}`;
}
