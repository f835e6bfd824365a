/** Before the tests: makes what the sources import from generated/, and the seed of what is tried at random. */

import { writeGenerated } from "../tools/build/generate";

export default async function setUp(): Promise<void> {
  await writeGenerated();
  const { env } = process;
  if (env.CI !== undefined || env.RINGBEAD_SEED !== undefined) return;
  env.RINGBEAD_SEED = String(Math.floor(Math.random() * 2 ** 31));
  console.log(`\nRINGBEAD_SEED=${env.RINGBEAD_SEED} tries the same again`);
}
