import { createServer } from "node:http";
import type { AddressInfo } from "node:net";

import { serve } from "../../tools/dev/serve";

test("takes the next port when one is taken, and says so", async () => {
  const other = createServer();
  await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", resolve));
  const { port } = other.address() as AddressInfo;
  const said: string[] = [];
  const server = await serve(port, (line) => said.push(line));
  expect(server.address).toBe(`http://127.0.0.1:${String(port + 1)}`);
  expect(said).toEqual([`port ${String(port)} is taken by another program; trying ${String(port + 1)}`]);
  await server.close();
  await new Promise((resolve) => other.close(resolve));
});

test("serves nothing from outside its folder", async () => {
  const server = await serve(4480);
  for (const asked of [
    "/../package.json",
    "/%2e%2e/package.json",
    "/sheet/..%2f..%2fpackage.json",
    "/nothing",
  ]) {
    const { status } = await fetch(server.address + asked);
    expect([asked, status]).toEqual([asked, 404]);
  }
  const home = await fetch(server.address, { redirect: "manual" });
  expect([home.status, home.headers.get("location")]).toEqual([302, "/sheet/"]);
  await server.close();
});
