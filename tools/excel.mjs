/** npm run excel: builds for development, serves the add-in to an Excel on this machine and says how to load it. */

import path from "node:path";

import { installPackages } from "./install.mjs";
import { DEVELOPMENT_URL, dist, identityAt } from "./project.mjs";

/**
 * @param {string} authority path of the certificate that signed the server's
 * @returns {string}
 */
export function instructions(authority) {
  const { title, namespace } = identityAt(DEVELOPMENT_URL);
  const manifest = path.join(dist, "manifest.xml");
  return `
Serving ${title} at ${DEVELOPMENT_URL}. Formulas are typed =${namespace}.… here, so that a released add-in can stay loaded.

1. Trust the certificate, once; take it out again when you are done. Its signing key was not kept.
     ${authority}
   Windows  double-click it, Install Certificate, Current User, Trusted Root Certification Authorities.
   Mac      double-click it, find it in Keychain Access, Trust: Always Trust.
   Web      or only open ${DEVELOPMENT_URL}/taskpane.html in the same browser and accept it there.

2. Load the manifest.
     ${manifest}
   Windows  share its folder, add the share under File, Options, Trust Center, Trusted Add-in Catalogs, show in menu;
            restart Excel; Home, Add-ins, Shared folder.
   Mac      copy it into ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef, restart Excel; Home, Add-ins.
   Web      Home, Add-ins, More settings, Upload My Add-in.

3. Open the pane on the Home tab. After a change build again (npm run build) and reload the pane. New formulas may take a
   restart of Excel, or up to a day, since it keeps the list of formulas.

Stop it with Ctrl+C.`;
}

async function start() {
  installPackages();
  // Only now are the packages there that these need.
  const { build } = await import("./build.mjs");
  const { certificates } = await import("./certificates.mjs");
  const { serve } = await import("./serve.mjs");
  console.log("building for development");
  await build(DEVELOPMENT_URL, (line) => console.log(`  ${line}`));
  const { authority, ...tls } = await certificates();
  await serve(Number(new URL(DEVELOPMENT_URL).port), console.log, { tls, ports: 1 });
  console.log(instructions(authority));
}

if (process.argv[1] === import.meta.filename) {
  start().catch((problem) => {
    console.error(problem instanceof Error ? problem.message : problem);
    process.exitCode = 1;
  });
}
