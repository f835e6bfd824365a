/** From where to where a test coupon qualifies; undefined where the rule sets no limit. */
export interface Covered<Value> {
  readonly least: Value | undefined;
  readonly most: Value | undefined;
}
