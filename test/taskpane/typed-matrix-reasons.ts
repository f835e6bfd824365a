/** Why a result may stand after a strange content, while all checks hold: by what is typed, then by the cell. */

export const REASONS: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  blank: {
    "the cell may stay blank: the formula has a default, which the label or the help tells": [
      "procedure bead_typed",
      "procedure runout",
      "procedure peak_typed",
      "procedure volts_typed",
      "procedure efficiency",
      "procedure speed_typed",
      "procedure overlap_typed",
      "procedure dwell_typed",
      "procedure bore_typed",
      "cycle speed_typed",
    ],
  },
  zero: {
    "none of it is a choice: no gas before or after, no walk, no waste, no overlap": [
      "procedure dwell_typed",
      "procedure prepurge",
      "procedure postpurge",
      "procedure handling",
      "procedure supply_ppm",
      "gas supply_ppm",
      "gas overlap",
      "gas handling",
      "gas waste",
      "cycle purge",
      "cycle prepurge",
      "cycle postpurge",
      "cycle walk",
      "cycle changes",
      "cycle change_minutes",
      "cycle coupons",
      "cycle coupon_minutes",
    ],
    "some hosts hand a blank cell of a list over as 0, so it is the metal of a blank": ["gas material"],
  },
  percent: {
    "a fraction: 5% is the 0.05 that it means": ["procedure back_share", "gas waste"],
    "a sheet takes 5% for 0.05 and shows it; a size or pressure that small can be": [
      "procedure wall",
      "procedure od_tolerance",
      "procedure runout",
      "procedure pressure_wanted",
      "cycle wall",
    ],
  },
  "other system": {
    "usual in both systems: 15 ft³/h and 7 L/min are each a flow of the other, 0.3 inH₂O and 0.75 mbar a pressure":
      ["procedure purge_flow", "procedure pressure_wanted", "gas torch_flow", "gas purge_flow"],
    "a limit of 212 °C suits a dam as one of 212 °F does": ["procedure dam_limit"],
  },
  date: {
    "a container may cost 46 024 of some currency; no price is written as a fraction": ["gas price"],
  },
};
