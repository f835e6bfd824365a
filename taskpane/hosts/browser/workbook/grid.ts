/** The engine's grid on the page, with the workbook it shows; another workbook takes the place of both. */

import { Model, Spreadsheet } from "@odoo/o-spreadsheet";
import templates from "@odoo/o-spreadsheet/dist/o_spreadsheet.xml";
import { App } from "@odoo/owl";

import type { WorkbookData } from "./store";

export class Grid {
  readonly #place: HTMLElement;
  #model: Model | undefined;
  #app: App | undefined;
  /** The grid is off the page because another takes its place. */
  #isChanging = false;

  constructor(place: HTMLElement) {
    this.#place = place;
  }

  get model(): Model {
    if (this.#model === undefined) throw new Error("no workbook is open");
    return this.#model;
  }

  /** Whether these are the open workbook's; a page makes others on the way. */
  shows(getters: Model["getters"]): boolean {
    return this.#model?.getters === getters;
  }

  /** The model is made before the old one goes: where the data cannot be read, all stays as it was. */
  async show(data: WorkbookData): Promise<Model> {
    const model = new Model(data);
    this.#isChanging = true;
    this.#app?.destroy();
    this.#model = model;
    // What the engine left on the page when it stopped on an error.
    this.#place.replaceChildren();
    this.#app = new App(Spreadsheet, { props: { model }, templates });
    await this.#app.mount(this.#place);
    this.#isChanging = false;
    return model;
  }

  /** Calls back when the engine has taken its grid off the page: it does so on any error of its own. */
  onLoss(listener: () => void): void {
    new MutationObserver(() => {
      if (!this.#isChanging && this.#place.querySelector(".o-spreadsheet") === null) listener();
    }).observe(this.#place, { childList: true });
  }
}
