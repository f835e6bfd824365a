/** What a sheet of the pretended Excel keeps just as it is told: what is frozen, what can be filtered, where pages end. */

import { placeOf } from "../../taskpane/sheets/addresses";

export function kept(
  call: (kind: string, work: () => void) => void,
  put: (path: string, value: unknown) => void,
  fakeAddress: (of: object) => string,
): object {
  return {
    freezePanes: {
      freezeRows: (rows: number) => {
        call("freezePanes.freezeRows", () => {
          put("frozenRows", rows);
        });
      },
      freezeAt: (corner: object) => {
        call("freezePanes.freezeAt", () => {
          put("frozenRows", placeOf(fakeAddress(corner).replace(/^.*:/, "")).row + 1);
          put("frozenColumns", placeOf(fakeAddress(corner).replace(/^.*:/, "")).column + 1);
        });
      },
    },
    autoFilter: {
      apply: (of: object) => {
        call("autoFilter.apply", () => {
          put("autoFilter", fakeAddress(of));
        });
      },
    },
    horizontalPageBreaks: {
      add: (before: string) => {
        call("horizontalPageBreaks.add", () => {
          put(`pageBreak ${before}`, true);
        });
      },
    },
  };
}
