/** npm run excel: builds for development, serves the add-in to an Excel on this machine and says how to load it. */

import { build } from "../build/built-site";
import { DEVELOPMENT_URL } from "../build/project";
import { certificates } from "./certificates";
import { instructions } from "./instructions";
import { serve } from "./serve";

console.log("building for development");
await build(DEVELOPMENT_URL, (line) => {
  console.log(`  ${line}`);
});
const { authority, ...tls } = await certificates();
await serve(Number(new URL(DEVELOPMENT_URL).port), console.log, { tls, ports: 1 });
console.log(instructions(authority));
