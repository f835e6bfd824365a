/** The objects of the fake Excel: each queues what it is asked and tells only what was loaded. */

import { addressOf, placeOf } from "../../taskpane/sheets/addresses";
import type { FakeCell, FakeChart, FakeContext, FakeSheet } from "./excel-fake";
import { FakeError } from "./excel-fake";
import { absolute, events } from "./excel-fake-events";
import { kept } from "./excel-fake-kept";

/** An object of the interface: its facts can be read once they are loaded, its methods are there at once. */
function client<Methods extends object>(
  context: FakeContext,
  kind: string,
  facts: () => Record<string, unknown> | undefined,
  methods: Methods,
  set: (name: string, value: unknown) => void = (name) => {
    throw new Error(`${kind}.${name} cannot be set here`);
  },
): Methods & Record<string, unknown> {
  const loaded = new Map<string, unknown>();
  const load = (names: string): void => {
    context.call(`${kind}.load`, () => {
      const now = facts();
      loaded.set("isNullObject", now === undefined);
      if (now === undefined) return;
      for (const name of names.split(",")) {
        const [own = ""] = name.trim().split("/");
        if (!(own in now)) throw new FakeError("InvalidArgument", `${kind} has no ${own}`);
        loaded.set(own, now[own]);
      }
    });
  };
  return new Proxy(
    { context, load, ...methods },
    {
      get: (target, name) => {
        if (typeof name !== "string" || name in target || name === "then")
          return Reflect.get(target, name) as unknown;
        if (!loaded.has(name)) throw new FakeError("PropertyNotLoaded", `${kind}.${name} was not loaded`);
        return loaded.get(name);
      },
      set: (_, name, value) => {
        context.call(`${kind}.${String(name)}`, () => {
          set(String(name), value);
        });
        return true;
      },
    },
  );
}

/** Settings within settings, such as format.font.bold; each is put under its path. */
function settings(
  context: FakeContext,
  kind: string,
  path: string,
  put: (path: string, value: unknown) => void,
): object {
  return new Proxy(
    {},
    {
      get: (_, name) => {
        if (name === "getItem") return (item: string) => settings(context, kind, `${path}${item}.`, put);
        if (!String(name).startsWith("set")) return settings(context, kind, `${path}${String(name)}.`, put);
        return (value: unknown) => {
          context.call(`${kind}.${String(name)}`, () => {
            put(path + String(name), value);
          });
        };
      },
      set: (_, name, value) => {
        context.call(`${kind}.${path}${String(name)}`, () => {
          put(path + String(name), value);
        });
        return true;
      },
    },
  );
}

export function workbook(context: FakeContext): object {
  const { excel } = context;
  const active = (): FakeSheet => {
    if (excel.active === undefined) throw new Error("no sheet is active");
    return excel.active;
  };
  const protection = client(
    context,
    "workbookProtection",
    () => ({ protected: excel.workbookProtected }),
    {},
  );
  const worksheets = client(
    context,
    "worksheets",
    () => ({ items: excel.sheets.map(({ name }) => ({ name })) }),
    {
      add: (name: string) => {
        let made: FakeSheet | undefined;
        context.call("worksheets.add", () => {
          if (excel.workbookProtected) throw new FakeError("AccessDenied");
          made = excel.add(name);
        });
        return worksheet(context, () => made);
      },
      getItem: (key: string) => worksheet(context, () => excel.find(key)),
      getItemOrNullObject: (key: string) => worksheet(context, () => excel.find(key)),
      getActiveWorksheet: () => worksheet(context, active),
      ...events(context, "onCalculated", "onChanged", "onActivated"),
    },
  );
  const getActiveCell = (): object => range(context, active, excel.activeAddress);
  return { worksheets, protection, getActiveCell, ...events(context, "onSelectionChanged") };
}

function worksheet(context: FakeContext, find: () => FakeSheet | undefined): object {
  const { excel } = context;
  const there = (): FakeSheet => {
    const sheet = find();
    if (sheet === undefined) throw new FakeError("ItemNotFound");
    return sheet;
  };
  const put = (path: string, value: unknown): void => void there().settings.set(path, value);
  const call = (kind: string, work: () => void): void => {
    context.call(kind, work);
  };
  return client(
    context,
    "worksheet",
    () => {
      const sheet = find();
      return sheet === undefined ? undefined : { id: sheet.id, name: sheet.name };
    },
    {
      getRange: (address: string) => range(context, there, address),
      getUsedRangeOrNullObject: () => range(context, there, undefined),
      activate: () => {
        call("worksheet.activate", () => (excel.active = there()));
      },
      delete: () => {
        call("worksheet.delete", () => excel.sheets.splice(excel.sheets.indexOf(there()), 1));
      },
      calculate: () => {
        call("worksheet.calculate", () => (excel.calculated += 1));
      },
      names: client(
        context,
        "names",
        () => ({
          items: [...there().names].map(([name, address]) => ({
            name,
            formula:
              there().formulas.get(name) ?? `='${there().name.replaceAll("'", "''")}'!${absolute(address)}`,
            getRangeOrNullObject: () => range(context, there, address),
          })),
        }),
        {
          add: (name: string, of: { address: string }) => {
            call("names.add", () => {
              if (there().names.has(name)) throw new FakeError("ItemAlreadyExists");
              const isFrozen = there().settings.has("frozenRows");
              if (isFrozen && excel.unkind.has("no names after frozen rows"))
                throw new FakeError("GeneralException");
              there().names.set(name, fakeAddress(of));
            });
          },
        },
      ),
      charts: { add: (kind: string, of: object) => chart(context, there, kind, of) },
      ...kept(call, put, fakeAddress),
      pageLayout: client(
        context,
        "pageLayout",
        () => ({ zoom: there().settings.get("pageLayout.zoom") ?? {} }),
        {
          setPrintArea: (area: string) => {
            call("pageLayout.setPrintArea", () => {
              put("pageLayout.setPrintArea", area);
            });
          },
        },
        (name, value) => {
          const others = { ...(value as object), horizontalFitToPages: undefined };
          const isKept = name !== "zoom" || !excel.unkind.has("page width not kept");
          put(`pageLayout.${name}`, isKept ? value : others);
        },
      ),
      protection: client(
        context,
        "protection",
        () => ({ protected: there().protection !== undefined, options: there().protection?.options ?? {} }),
        {
          protect: (options: object) => {
            call("protection.protect", () => (there().protection = { options }));
          },
          unprotect: () => {
            call("protection.unprotect", () => {
              if (there().protection?.password !== undefined) throw new FakeError("AccessDenied");
              there().protection = undefined;
            });
          },
        },
      ),
    },
    put,
  );
}

/** The address a range object stands for, which Excel knows without being asked. */
const ADDRESS = Symbol("address");

function fakeAddress(of: object): string {
  return String((of as Record<symbol, unknown>)[ADDRESS]);
}

function chart(context: FakeContext, there: () => FakeSheet, kind: string, of: object): object {
  const made: FakeChart = {
    kind,
    settings: new Map(),
    series: [{ name: "", values: fakeAddress(of), labels: "" }],
  };
  const put = (path: string, value: unknown): void => void made.settings.set(path, value);
  context.call("charts.add", () => there().charts.push(made));
  const one = (index: number): object => ({
    set chartType(type: string) {
      put(`series.${String(index)}.chartType`, type);
    },
    set markerStyle(style: string) {
      put(`series.${String(index)}.markerStyle`, style);
    },
    format: settings(context, "series", `series.${String(index)}.`, put),
    setValues: (values: object) => {
      context.call(
        "series.setValues",
        () => ((made.series[index] as { values: string }).values = fakeAddress(values)),
      );
    },
    setXAxisValues: (labels: object) => {
      context.call(
        "series.setXAxisValues",
        () => ((made.series[index] as { labels: string }).labels = fakeAddress(labels)),
      );
    },
  });
  let count = 1;
  return {
    title: settings(context, "chart", "title.", put),
    legend: settings(context, "chart", "legend.", put),
    axes: settings(context, "chart", "axes.", put),
    delete: () => {
      context.call("chart.delete", () => {
        const { charts } = there();
        if (!charts.includes(made)) throw new FakeError("ItemNotFound");
        charts.splice(charts.indexOf(made), 1);
      });
    },
    setPosition: (from: string, to: string) => {
      context.call("chart.setPosition", () => {
        put("position", `${from}:${to}`);
      });
    },
    series: {
      getItemAt: one,
      add: (name: string) => {
        context.call("series.add", () => made.series.push({ name, values: "", labels: "" }));
        count += 1;
        return one(count - 1);
      },
    },
  };
}

/** The addresses of a range, row by row. */
export function addressesIn(address: string): string[][] {
  const [first = "", last = first] = address.replaceAll("$", "").split(":");
  const [from, to] = [placeOf(first), placeOf(last)];
  return Array.from({ length: to.row - from.row + 1 }, (_, r) =>
    Array.from({ length: to.column - from.column + 1 }, (_unused, c) =>
      addressOf({ column: from.column + c, row: from.row + r }),
    ),
  );
}

function usedAddress(sheet: FakeSheet): string | undefined {
  const places = [...sheet.cells].filter(([, { formula }]) => formula !== "").map(([at]) => placeOf(at));
  if (places.length === 0) return undefined;
  const bounds = (of: (numbers: number[]) => number): string =>
    addressOf({ column: of(places.map(({ column }) => column)), row: of(places.map(({ row }) => row)) });
  const least = (numbers: number[]): number => Math.min(...numbers);
  const most = (numbers: number[]): number => Math.max(...numbers);
  return `${bounds(least)}:${bounds(most)}`;
}

/** What may be typed into the cells of a range; loaded of the first of them. */
function dataValidation(
  context: FakeContext,
  first: () => FakeCell,
  put: (path: string, value: unknown) => void,
): object {
  const path = (name: string): string => `dataValidation.${name}`;
  const told = (name: string): unknown => first().style.get(path(name));
  const kinds = { custom: null, decimal: null, list: null };
  return client(
    context,
    "dataValidation",
    () => ({
      type: told("rule") === undefined ? "None" : "Set",
      rule: { ...kinds, ...(told("rule") as object | undefined) },
      ignoreBlanks: told("ignoreBlanks") ?? true,
      errorAlert: told("errorAlert") ?? {},
    }),
    {
      clear: () => {
        context.call("dataValidation.clear", () => {
          for (const name of ["rule", "ignoreBlanks", "errorAlert"]) put(path(name), undefined);
        });
      },
    },
    (name, value) => {
      put(path(name), value);
    },
  );
}

/** A range; without an address the one that holds everything on its sheet. */
function range(context: FakeContext, there: () => FakeSheet, given: string | undefined): object {
  const address = (): string | undefined => given ?? usedAddress(there());
  const each = (work: (cell: FakeCell, at: string, row: number, column: number) => void): void => {
    addressesIn(address() ?? "").forEach((row, r) => {
      row.forEach((at, c) => {
        work(there().cell(at), at, r, c);
      });
    });
  };
  const put = (path: string, value: unknown): void => {
    if (path === "columnWidth") {
      there().settings.set(`columnWidth ${given ?? ""}`, value);
      return;
    }
    if (there().protection !== undefined) throw new FakeError("AccessDenied");
    each(({ style }) => style.set(path, value));
  };
  const grid = (of: (cell: FakeCell) => unknown): unknown[][] =>
    addressesIn(address() ?? "").map((row) => row.map((at) => of(there().cell(at))));
  const made = client(
    context,
    "range",
    () => {
      const at = address();
      if (at === undefined) return undefined;
      return {
        address: `'${there().name}'!${at}`,
        cellCount: addressesIn(at).flat().length,
        formulas: grid(({ formula }) => formula),
        values: grid(({ value }) => value),
        valueTypes: grid(({ type }) => type),
        text: grid(({ value }) => String(value)),
        numberFormat: grid(({ format }) => format),
      };
    },
    {
      merge: () => {
        context.call("range.merge", () => there().merged.push(address() ?? ""));
      },
      clear: () => {
        context.call("range.clear", () => {
          each((_, at) => there().cells.delete(at));
        });
      },
      format: settings(context, "range.format", "", put),
      dataValidation: dataValidation(
        context,
        () => there().cell(addressesIn(address() ?? "")[0]?.[0] ?? ""),
        put,
      ),
      conditionalFormats: {
        add: (kind: string) => {
          const set = new Map<string, unknown>();
          context.call("conditionalFormats.add", () => {
            there().conditionals.push({ range: address() ?? "", kind, settings: set });
          });
          return settings(context, "conditionalFormat", "", (path, value) => void set.set(path, value));
        },
      },
      getSpillParentOrNullObject: () => {
        const parent = (): string | undefined => there().spilled.get(given ?? "");
        return client(
          context,
          "spillParent",
          () => {
            const at = parent();
            if (at === undefined) return undefined;
            return { address: `'${there().name}'!${at}`, formulas: [[there().cell(at).formula]] };
          },
          {},
        );
      },
      get worksheet() {
        return worksheet(context, there);
      },
      [ADDRESS]: given,
    },
    (name, value) => {
      const rows = value as (string | number | boolean)[][];
      each((cell, at, r, c) => {
        const content = rows[r]?.[c];
        if (content === undefined) throw new FakeError("InvalidArgument", "the table does not fit the range");
        if (name === "formulas") {
          if (there().protection !== undefined && cell.style.get("protection.locked") !== false) {
            throw new FakeError("AccessDenied");
          }
          context.excel.enter(there(), at, content);
        } else if (name === "numberFormat") cell.format = String(content);
        else throw new Error(`range.${name} cannot be set here`);
      });
    },
  );
  return made;
}
