/**
 * Every printed number of the pipe tables comes back as the double that a person who types it gets, so that a sheet
 * finds the two equal.
 */

import { number, refusal } from "../bead";
import { evidence, MEMORY, REFERENCE_LIBRARY } from "../evidence";

const SCHEDULES = ["5S", "10S", "40S", "80S", "5", "10", "40", "80"] as const;

/** Outside diameter, then a wall a schedule in the order above; "–" where the standard has none. */
const INCHES: Readonly<Record<string, string>> = {
  "1/8": "0.405  –     0.049 0.068 0.095  –     0.049 0.068 0.095",
  "1/4": "0.540  –     0.065 0.088 0.119  –     0.065 0.088 0.119",
  "3/8": "0.675  –     0.065 0.091 0.126  –     0.065 0.091 0.126",
  "1/2": "0.840  0.065 0.083 0.109 0.147  0.065 0.083 0.109 0.147",
  "3/4": "1.050  0.065 0.083 0.113 0.154  0.065 0.083 0.113 0.154",
  "1": "1.315  0.065 0.109 0.133 0.179  0.065 0.109 0.133 0.179",
  "1-1/4": "1.660  0.065 0.109 0.140 0.191  0.065 0.109 0.140 0.191",
  "1-1/2": "1.900  0.065 0.109 0.145 0.200  0.065 0.109 0.145 0.200",
  "2": "2.375  0.065 0.109 0.154 0.218  0.065 0.109 0.154 0.218",
  "2-1/2": "2.875  0.083 0.120 0.203 0.276  0.083 0.120 0.203 0.276",
  "3": "3.500  0.083 0.120 0.216 0.300  0.083 0.120 0.216 0.300",
  "3-1/2": "4.000  0.083 0.120 0.226 0.318  0.083 0.120 0.226 0.318",
  "4": "4.500  0.083 0.120 0.237 0.337  0.083 0.120 0.237 0.337",
  "5": "5.563  0.109 0.134 0.258 0.375  0.109 0.134 0.258 0.375",
  "6": "6.625  0.109 0.134 0.280 0.432  0.109 0.134 0.280 0.432",
  "8": "8.625  0.109 0.148 0.322 0.500  0.109 0.148 0.322 0.500",
  "10": "10.750 0.134 0.165 0.365 0.500  0.134 0.165 0.365 0.594",
  "12": "12.750 0.156 0.180 0.375 0.500  0.156 0.180 0.406 0.688",
};
const MILLIMETERS: Readonly<Record<string, string>> = {
  "1/8": "10.3  –    1.24 1.73 2.41  –    1.24 1.73 2.41",
  "1/4": "13.7  –    1.65 2.24 3.02  –    1.65 2.24 3.02",
  "3/8": "17.1  –    1.65 2.31 3.20  –    1.65 2.31 3.20",
  "1/2": "21.3  1.65 2.11 2.77 3.73  1.65 2.11 2.77 3.73",
  "3/4": "26.7  1.65 2.11 2.87 3.91  1.65 2.11 2.87 3.91",
  "1": "33.4  1.65 2.77 3.38 4.55  1.65 2.77 3.38 4.55",
  "1-1/4": "42.2  1.65 2.77 3.56 4.85  1.65 2.77 3.56 4.85",
  "1-1/2": "48.3  1.65 2.77 3.68 5.08  1.65 2.77 3.68 5.08",
  "2": "60.3  1.65 2.77 3.91 5.54  1.65 2.77 3.91 5.54",
  "2-1/2": "73.0  2.11 3.05 5.16 7.01  2.11 3.05 5.16 7.01",
  "3": "88.9  2.11 3.05 5.49 7.62  2.11 3.05 5.49 7.62",
  "3-1/2": "101.6 2.11 3.05 5.74 8.08  2.11 3.05 5.74 8.08",
  "4": "114.3 2.11 3.05 6.02 8.56  2.11 3.05 6.02 8.56",
  "5": "141.3 2.77 3.40 6.55 9.53  2.77 3.40 6.55 9.53",
  "6": "168.3 2.77 3.40 7.11 10.97 2.77 3.40 7.11 10.97",
  "8": "219.1 2.77 3.76 8.18 12.70 2.77 3.76 8.18 12.70",
  "10": "273.1 3.40 4.19 9.27 12.70 3.40 4.19 9.27 15.09",
  "12": "323.9 3.96 4.57 9.53 12.70 3.96 4.57 10.31 17.48",
};

function expectTable(nps: string, printed: string, units: "US" | "SI"): number {
  const [od = "", ...walls] = printed.split(/ +/);
  expect(walls).toHaveLength(SCHEDULES.length);
  expect(number("PIPE_OD", nps, units)).toBe(Number(od));
  SCHEDULES.forEach((schedule, i) => {
    if (walls[i] === "–") expect(refusal("PIPE_WALL", nps, schedule, units)).toMatch(/^#N\/A schedule = /);
    else expect([schedule, number("PIPE_WALL", nps, schedule, units)]).toEqual([schedule, Number(walls[i])]);
  });
  return 1 + walls.filter((wall) => wall !== "–").length;
}

describe(
  evidence("PIPE_OD PIPE_WALL", MEMORY, "asme-b36.19m", "every inch of the table, with [asme-b36.10m]"),
  () => {
    test.each(Object.entries(INCHES))("NPS %s: %s in", (nps, printed) => {
      expect(expectTable(nps, printed, "US")).toBeGreaterThanOrEqual(7);
    });
  },
);

describe(
  evidence(
    "PIPE_OD PIPE_WALL",
    REFERENCE_LIBRARY,
    "fluids-1.3.1",
    "every millimeter of [asme-b36.19m] and [asme-b36.10m]",
  ),
  () => {
    test.each(Object.entries(MILLIMETERS))("NPS %s: %s mm", (nps, printed) => {
      expect(expectTable(nps, printed, "SI")).toBeGreaterThanOrEqual(7);
    });
  },
);

test("they are 312 numbers", () => {
  const counted = [...Object.values(INCHES), ...Object.values(MILLIMETERS)].flatMap((printed) =>
    printed.split(/ +/).filter((one) => one !== "–"),
  );
  expect(counted).toHaveLength(312);
});
