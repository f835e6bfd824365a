/** How an Excel on this machine loads the add-in under development. */

import path from "node:path";

import { DEVELOPMENT_URL, dist, identityAt } from "../build/project";

/** `authority`: path of the certificate that signed the server's. */
export function instructions(authority: string): string {
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
