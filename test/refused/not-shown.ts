/** Rules that no call here shows, each with the reason. */
export const NOT_SHOWN: readonly [words: string, why: string][] = [
  [
    "has no suggested schedule with this wall; suggested … = …: …",
    "stands before the rule that the suggested value breaks, and is shown under that rule",
  ],
  ["has no suggested schedule with this wall; …", "the same"],
  ["maximum …", "a part of the sentence on sizes that no tube has"],
  ["minimum …", "a part of the sentence on sizes that no tube has"],
  ["row …: …", "stands before the rule that a cell of that row breaks, and is shown under that rule"],
  ["must have at most … filled rows", "it takes a thousand coupons in one range"],
  ["is no joint: …", "stands before the rule that the line breaks, and is shown under that rule"],
  ["sectors are too many; at most …", "it takes hundreds of currents in one range"],
  [
    "Thin wall: volts are those of the minimum gap that they are estimated for, that of a wall of ….",
    "a remark of SCHEDULE, no refusal",
  ],
];
