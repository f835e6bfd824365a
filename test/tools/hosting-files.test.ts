import { XMLParser } from "fast-xml-parser";

import { FIXED_NAMES, hostingFiles } from "../../tools/build/hosting";
import { ruled } from "./headers-file";

const FOLDER = "/ringbead";

describe("what the build writes for hosts", () => {
  const url = "https://addins.example/ringbead";
  const files = hostingFiles(url);
  const headersOf = (name: string): Record<string, string> =>
    ruled(files.get("_headers") ?? "", `${FOLDER}/${name}`);

  test("_headers: any origin reads every file, and fixed names are asked for again", () => {
    for (const name of FIXED_NAMES) {
      expect(headersOf(name)).toMatchObject({
        "Access-Control-Allow-Origin": "*",
        "Cache-Control": "no-cache",
      });
    }
    expect(headersOf("taskpane.0123456789.js")).toEqual({
      "Access-Control-Allow-Origin": "*",
      "X-Content-Type-Options": "nosniff",
    });
    expect(hostingFiles("https://addins.example").get("_headers")).toContain("\n/functions.json\n");
  });

  test("web.config: the same, as a document that an XML reader takes", () => {
    interface Location {
      readonly path: string;
      readonly "system.webServer": { readonly staticContent: { readonly clientCache: object } };
    }
    const parser = new XMLParser({ ignoreAttributes: false, attributeNamePrefix: "" });
    const { configuration } = parser.parse(files.get("web.config") ?? "") as {
      configuration: {
        readonly location: readonly Location[];
        readonly "system.webServer": {
          readonly httpProtocol: { readonly customHeaders: { readonly add: readonly object[] } };
          readonly staticContent: { readonly mimeMap: readonly object[] };
        };
      };
    };
    const { httpProtocol, staticContent } = configuration["system.webServer"];
    expect(httpProtocol.customHeaders.add).toContainEqual({
      name: "Access-Control-Allow-Origin",
      value: "*",
    });
    expect(staticContent.mimeMap).toContainEqual({ fileExtension: ".json", mimeType: "application/json" });
    expect(configuration.location.map((one) => one.path)).toEqual([...FIXED_NAMES]);
    for (const one of configuration.location) {
      expect(one["system.webServer"].staticContent.clientCache).toEqual({ cacheControlMode: "DisableCache" });
    }
  });

  test("nginx.conf: both places have the header, every fixed name fits the inner one, brackets close", () => {
    const piece = files.get("nginx.conf") ?? "";
    expect(piece.match(/add_header Access-Control-Allow-Origin "\*" always;/g)).toHaveLength(2);
    expect(piece).toContain("location /ringbead/ {");
    const inner = new RegExp(/location ~ (\S+) \{/.exec(piece)?.[1] ?? "^$");
    for (const name of FIXED_NAMES) expect(inner.test(`${FOLDER}/${name}`)).toBe(true);
    expect(inner.test(`${FOLDER}/taskpane.0123456789.js`)).toBe(false);
    expect(piece.match(/\{/g)?.length).toBe(piece.match(/\}/g)?.length);
  });
});
