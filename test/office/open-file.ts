/** Opens files in LibreOffice, without a window and with a profile of its own, and gives what it makes of them. */

import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";

import type { CellObject, WorkSheet } from "@e965/xlsx";
import { read } from "@e965/xlsx";
import { strFromU8, unzipSync } from "fflate";

import { findOffice } from "../../tools/dev/office";

/** Comma, double quotes, UTF-8, from line 1, numbers as the cells show them. */
const SHOWN = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true";

export interface Opened {
  /** What a cell shows. */
  shown(at: string): string;
  /** What it holds. */
  held(at: string): CellObject | undefined;
  /** A part of the file that it is saved as again. */
  part(path: string): string;
}

export function openFiles(files: ReadonlyMap<string, Uint8Array>): Map<string, Opened> {
  const folder = mkdtempSync(path.join(tmpdir(), "ringbead-office-"));
  try {
    for (const [name, bytes] of files) writeFileSync(path.join(folder, `${name}.xlsx`), bytes);
    const names = [...files.keys()];
    convert(folder, names, SHOWN, "shown");
    convert(folder, names, "xlsx:Calc MS Excel 2007 XML", "held");
    return new Map(
      names.map((name) => {
        const shown = firstSheet(readFileSync(path.join(folder, "shown", `${name}.csv`)), true);
        const saved = readFileSync(path.join(folder, "held", `${name}.xlsx`));
        const held = firstSheet(saved, false);
        const parts = unzipSync(new Uint8Array(saved));
        return [
          name,
          {
            shown: (at) => String((shown[at] as CellObject | undefined)?.v ?? ""),
            held: (at) => held[at] as CellObject | undefined,
            part: (wanted) => strFromU8(parts[wanted] ?? new Uint8Array()),
          },
        ];
      }),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export interface Printed {
  /** Pages of paper. */
  readonly pages: number;
  /** Words of each page; undefined where this machine has no program that reads them. */
  readonly words?: readonly string[];
}

/** What comes out of the printer for each file. */
export function printed(files: ReadonlyMap<string, Uint8Array>): Map<string, Printed> {
  const folder = mkdtempSync(path.join(tmpdir(), "ringbead-office-"));
  try {
    for (const [name, bytes] of files) writeFileSync(path.join(folder, `${name}.xlsx`), bytes);
    convert(folder, [...files.keys()], "pdf", "printed");
    return new Map(
      [...files.keys()].map((name) => {
        const file = path.join(folder, "printed", `${name}.pdf`);
        const pages =
          readFileSync(file)
            .toString("latin1")
            .match(/\/Type\s*\/Page\b/g)?.length ?? 0;
        const { status, stdout } = spawnSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" });
        return [name, { pages, ...(status === 0 ? { words: stdout.split("\f") } : {}) }];
      }),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function convert(folder: string, names: readonly string[], to: string, into: string): void {
  const program = findOffice();
  if (program === undefined) throw new Error("no LibreOffice is installed");
  const { status, stderr } = spawnSync(
    program,
    [
      `-env:UserInstallation=${pathToFileURL(path.join(folder, "profile")).href}`,
      "--headless",
      "--convert-to",
      to,
      "--outdir",
      path.join(folder, into),
      ...names.map((name) => path.join(folder, `${name}.xlsx`)),
    ],
    { encoding: "utf8" },
  );
  if (status !== 0) throw new Error(`LibreOffice could not open the files: ${stderr}`);
}

/** `raw` leaves every text as it is. */
function firstSheet(file: Buffer, raw: boolean): WorkSheet {
  const book = raw
    ? read(file.toString("utf8"), { type: "string", raw: true })
    : read(file, { type: "buffer" });
  const sheet = book.Sheets[book.SheetNames[0] ?? ""];
  if (sheet === undefined) throw new Error("LibreOffice wrote no sheet");
  return sheet;
}
