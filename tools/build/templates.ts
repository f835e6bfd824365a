/** npm run templates: dist/templates/ from what was built, building first where nothing is. */

import { existsSync } from "node:fs";
import path from "node:path";

import { build } from "./built-site";
import { dist } from "./project";
import { writeTemplates } from "./template-files";

if (!existsSync(path.join(dist, "functions.js"))) await build();
for (const file of await writeTemplates()) console.log(`wrote ${path.relative(process.cwd(), file)}`);
