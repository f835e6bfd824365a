/** The pictures of the joint that a procedure sheet plans. */

import type { ShownForm } from "./cells";
import { Joint } from "./joint";
import type { Picture } from "./picture";
import { purgePicture } from "./purge";
import { ringPicture } from "./ring";
import { sectionPicture } from "./section";

/** Undefined where the sheet plans no joint. */
export function picturesOf(form: ShownForm | undefined): readonly Picture[] | undefined {
  if (form?.template !== "procedure") return undefined;
  return [sectionPicture, ringPicture, purgePicture].map((picture) => picture(new Joint(form)));
}
