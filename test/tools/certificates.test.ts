import { X509Certificate } from "node:crypto";
import { chmodSync, existsSync, mkdtempSync, readdirSync, readFileSync, statSync } from "node:fs";
import { request } from "node:https";
import type { IncomingMessage } from "node:http";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import os from "node:os";
import path from "node:path";

import { certificates } from "../../tools/dev/certificates";
import { instructions } from "../../tools/dev/instructions";
import { serve } from "../../tools/dev/serve";

const folder = mkdtempSync(path.join(os.tmpdir(), "ringbead-"));

beforeAll(() => {
  // The generator reports on the console.
  jest.spyOn(console, "log").mockImplementation(() => undefined);
});

/** Asks over https, trusting only the authority given. */
function ask(address: string, authority: string): Promise<IncomingMessage> {
  return new Promise((resolve, reject) => {
    const asked = request(address, { ca: readFileSync(authority), agent: false }, (response) => {
      response.resume();
      resolve(response);
    });
    asked.on("error", reject);
    asked.end();
  });
}

async function freePort(): Promise<number> {
  const other = createServer();
  await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", resolve));
  const { port } = other.address() as AddressInfo;
  await new Promise((resolve) => other.close(resolve));
  return port;
}

test("makes certificates for this machine, keeps no signing key and makes them once", async () => {
  const made = await certificates(folder);
  const [server, authority] = [
    new X509Certificate(made.cert),
    new X509Certificate(readFileSync(made.authority)),
  ];
  expect(server.checkHost("localhost")).toBe("localhost");
  expect(server.checkIP("127.0.0.1")).toBe("127.0.0.1");
  expect(server.verify(authority.publicKey)).toBe(true);
  expect(authority.ca).toBe(true);
  expect(readdirSync(folder).filter((file) => file.endsWith(".key"))).toEqual(["localhost.key"]);
  expect((await certificates(folder)).cert).toBe(made.cert);
});

test("the key is for its owner alone, also one that was made earlier with other rights", async () => {
  const place = path.join(mkdtempSync(path.join(os.tmpdir(), "ringbead-")), "certificates");
  const key = path.join(place, "localhost.key");
  const rights = (file: string): string => (statSync(file).mode & 0o777).toString(8);
  await certificates(place);
  expect([rights(place), rights(key)]).toEqual(["700", "600"]);
  const content = readFileSync(key, "utf8");
  chmodSync(place, 0o755);
  chmodSync(key, 0o644);
  await certificates(place);
  expect([rights(place), rights(key)]).toEqual(["700", "600"]);
  expect(readFileSync(key, "utf8")).toBe(content);
});

test("serves over https to pages of any origin, as Excel on the web needs", async () => {
  const { authority, ...tls } = await certificates(folder);
  const server = await serve(await freePort(), undefined, { tls });
  expect(server.address).toMatch(/^https:\/\/localhost:\d+$/);
  const { statusCode, headers } = await ask(`${server.address}/nothing`, authority);
  expect(statusCode).toBe(404);
  expect(headers["access-control-allow-origin"]).toBe("*");
  await server.close();
});

test("takes no other port than the one the manifest names, and says so", async () => {
  const { key, cert } = await certificates(folder);
  const other = createServer();
  await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", resolve));
  const { port } = other.address() as AddressInfo;
  await expect(serve(port, undefined, { tls: { key, cert }, ports: 1 })).rejects.toThrow(
    `port ${String(port)} is taken by another program`,
  );
  await new Promise((resolve) => other.close(resolve));
});

test("says how to load it on Windows, on a Mac and on the web", async () => {
  const { authority } = await certificates(folder);
  const text = instructions(authority);
  for (const word of ["Windows", "Mac", "Web", "manifest.xml", "https://localhost:3000", "=BEADDEV."]) {
    expect(text).toContain(word);
  }
  expect(existsSync(authority)).toBe(true);
  expect(text).toContain(authority);
});
