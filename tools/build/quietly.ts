/** Work of the engine, which reports every command on the console. */
export async function quietly<T>(work: () => Promise<T>): Promise<T> {
  const { debug } = console;
  console.debug = () => undefined;
  try {
    return await work();
  } finally {
    console.debug = debug;
  }
}
