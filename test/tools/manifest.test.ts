import { writeManifest } from "../../tools/build/manifest";
import { manifestErrors } from "../../tools/build/manifest-errors";

const URL = "https://addins.example/ringbead";
const everythingBuilt = (): boolean => true;
const good = writeManifest(URL);

/** What the checker says of the manifest after one thing in it was changed. */
function after(from: string | RegExp, to: string): string {
  const changed = good.replace(from, to);
  expect(changed).not.toBe(good);
  return manifestErrors(changed, URL, everythingBuilt).join("\n");
}

test("the manifest we write is right, and says where it is served", () => {
  expect(manifestErrors(good, URL, everythingBuilt)).toEqual([]);
  expect(good).toContain(`${URL}/functions.json`);
  expect(good).not.toContain("{{");
});

test("it declares the shared runtime and the requirement sets", () => {
  expect(good).toContain('<Set Name="SharedRuntime" MinVersion="1.1"/>');
  expect(good).toContain('<Set Name="CustomFunctionsRuntime" MinVersion="1.3"/>');
  expect(good).toContain('<Set Name="ExcelApi" MinVersion="1.9"/>');
  expect(good).toContain('<Runtime resid="Pane.Url" lifetime="long"/>');
});

test.each<[string, string | RegExp, string, string]>([
  ["elements out of order", /( *<Version>.*\n)( *<ProviderName>.*\n)/, "$2$1", "Version stands too late"],
  [
    "an element that does not belong",
    "<Permissions>",
    "<Colour/><Permissions>",
    "Colour does not belong there",
  ],
  [
    "a Page after the Metadata",
    /(<Page>[\s\S]*<\/Page>)(\s*)(<Metadata>[\s\S]*?<\/Metadata>)/,
    "$3$2$1",
    "Metadata stands too late|Page stands too late",
  ],
  ["a resid that nothing has", 'resid="Button.Tip"', 'resid="Button.Tap"', "nothing has the id Button.Tap"],
  ["an id over 32 characters", /Button\.Tip/g, `Button.${"T".repeat(40)}`, "is over 32 characters"],
  [
    "a short text over 125",
    'DefaultValue="Ringbead is loaded"',
    `DefaultValue="${"x".repeat(126)}"`,
    "over 125 characters",
  ],
  [
    "a long text over 250",
    /DefaultValue="Insert a procedure/,
    `DefaultValue="${"x".repeat(251)}`,
    "over 250 characters",
  ],
  ["an address without https", `${URL}/functions.js"`, 'http://addins.example/functions.js"', "is not https"],
  [
    "an address of another server",
    `${URL}/functions.js"`,
    'https://elsewhere.example/functions.js"',
    "is not under",
  ],
  ["a short-lived runtime", 'lifetime="long"', 'lifetime="short"', "lifetime is not long"],
  [
    "a pane outside the shared runtime",
    /(<Action[^>]*>\s*<SourceLocation resid=")Pane\.Url/,
    "$1Help.Url",
    "must use Pane.Url",
  ],
  ["no runtime", /<Runtimes>[\s\S]*<\/Runtimes>/, "", "no Runtime"],
  ["another namespace", 'DefaultValue="BEAD"', 'DefaultValue="BEADS"', "the namespace is not BEAD"],
  [
    "a missing requirement",
    '<Set Name="ExcelApi" MinVersion="1.9"/>',
    "",
    "requirement ExcelApi 1.9 is missing",
  ],
  ["an id that is no GUID", /<Id>.*<\/Id>/, "<Id>ringbead</Id>", "Id is not a GUID"],
  [
    "a version that is no version",
    /<Version>.*<\/Version>/,
    "<Version>one</Version>",
    "Version is not 1 to 4 numbers",
  ],
])("finds %s", (_, from, to, expected) => {
  expect(after(from, to)).toMatch(new RegExp(expected));
});

test("finds an address that the build does not hold", () => {
  const errors = manifestErrors(good, URL, (file) => file !== "icon-80.png");
  expect(errors).toEqual([`${URL}/icon-80.png is not in the build`]);
});
