/** Whether the files of a host belong together and are those of the version that is expected. */

interface Parts {
  readonly manifest: string | undefined;
  readonly help: string | undefined;
  readonly script: string | undefined;
}

export function versionFaults({ manifest, help, script }: Parts, version: string): string[] {
  const faults: string[] = [];
  const compare = (name: string, found: string | undefined): void => {
    if (found === version) return;
    faults.push(
      found === undefined
        ? `${name}: it tells no version; something else answers in its place`
        : `${name}: it is version ${found}, expected is ${version}; upload all of dist/ again`,
    );
  };
  if (manifest !== undefined)
    compare("manifest.xml", /<Version>(\d+\.\d+\.\d+)(?:\.0)?<\/Version>/.exec(manifest)?.[1]);
  if (help !== undefined) compare("help.json", versionIn(help));
  if (script !== undefined && !script.includes(JSON.stringify(version)))
    faults.push(`functions.js: it is not version ${version}; upload all of dist/ again`);
  return faults;
}

/** Every formula that Excel is told of has to be in the script. */
export function idFaults(list: string | undefined, script: string | undefined): string[] {
  if (list === undefined) return [];
  const ids = idsIn(list);
  if (ids === undefined)
    return ["functions.json: it is no list of formulas; something else answers in its place"];
  if (script === undefined) return [];
  const missing = ids.filter((id) => !script.includes(JSON.stringify(id)));
  return missing.length === 0
    ? []
    : [
        `functions.js: it lacks ${missing.join(", ")}, which functions.json names: the two are of different builds`,
      ];
}

function versionIn(help: string): string | undefined {
  const { version } = (parsed(help) ?? {}) as { version?: unknown };
  return typeof version === "string" ? version : undefined;
}

function idsIn(list: string): string[] | undefined {
  const { functions } = (parsed(list) ?? {}) as { functions?: unknown };
  if (!Array.isArray(functions) || functions.length === 0) return undefined;
  return functions.map((one: { id?: string } | null) => one?.id ?? "");
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
