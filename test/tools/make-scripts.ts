/** Bundles the functions with the settings of the build into a folder, and writes the scripts for other spreadsheets there. */

import { bundle } from "../../tools/build/bundle";
import { writeScripts } from "../../tools/build/scripts/written";
import { bundles } from "../../tools/build/webpack";

const [, , folder = ""] = process.argv;
await bundle(bundles("production", folder).functions);
writeScripts(folder);
