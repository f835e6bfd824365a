/** A page in the looks of the help. */

/** The pages load nothing from elsewhere, and run no script but one of their own where they name it. */
const POLICY = "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'";

export function page(title: string, body: string, script?: string): string {
  const policy = script === undefined ? POLICY : `${POLICY}; script-src 'self'`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<link rel="icon" href="icon-32.png">
<link rel="stylesheet" href="help.css">${script === undefined ? "" : `\n<script src="${script}" defer></script>`}
</head>
<body>
<main>
${body}
</main>
</body>
</html>
`;
}
