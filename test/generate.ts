/** Before the tests: makes what the sources import from generated/. */

import { writeGenerated } from "../tools/build/generate";

export default async function setUp(): Promise<void> {
  await writeGenerated();
}
