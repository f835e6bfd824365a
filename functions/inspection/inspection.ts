/** Inspection and yield. */

import { family } from "../formula";
import { SAMPLE_ODDS, SAMPLE_PLAN, SAMPLE_SIZE } from "./plan";
import { LOG_CHECK } from "./log";
import { REJECT_RATE } from "./reject-rate";
import { COUPONS, JOINTS_START } from "./yield";

export const INSPECTION = family("Inspection", [
  SAMPLE_PLAN,
  SAMPLE_ODDS,
  SAMPLE_SIZE,
  REJECT_RATE,
  JOINTS_START,
  COUPONS,
  LOG_CHECK,
]);
