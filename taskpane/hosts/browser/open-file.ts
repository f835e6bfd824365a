/** Lets a person choose a file to open, or drop one on the page. */

import { element } from "../../pane/dom";

export function chooseFile(open: (file: File) => void): void {
  const chooser = element("input", { type: "file", accept: ".xlsx" });
  chooser.addEventListener("change", () => {
    const file = chooser.files?.[0];
    if (file !== undefined) open(file);
  });
  chooser.click();
}

export function acceptDrops(open: (file: File) => void): void {
  window.addEventListener("dragover", (event) => {
    if (event.dataTransfer?.types.includes("Files") === true) event.preventDefault();
  });
  window.addEventListener("drop", (event) => {
    const file = event.dataTransfer?.files[0];
    if (file === undefined) return;
    event.preventDefault();
    open(file);
  });
}
