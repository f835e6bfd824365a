/** A page in the looks of the help. */

/** The pages run no script and load nothing from elsewhere. */
const POLICY = "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'";

export function page(title: string, body: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<link rel="icon" href="icon-32.png">
<link rel="stylesheet" href="help.css">
</head>
<body>
<main>
${body}
</main>
</body>
</html>
`;
}
