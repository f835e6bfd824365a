/**
 * Names of a curve's points out of cells, as Excel 2013 and later keep them ([MS-ODRAWXML], datalabelsRange): in extensions
 * that other programs pass over, with what the cells held when the file was saved. A point that has a name then says so by
 * itself too, for programs that look there alone.
 */

import type { PointNames } from "./charts";
import { markup } from "./text";

const SERIES = /<c:ser>.*?<\/c:ser>/gs;
/** Labels that are to be names: the writer puts the name's key between their parts. */
const LABELS = /<c:dLbls>.*?<c:separator>([^<]*)<\/c:separator>.*?<\/c:dLbls>/s;
const NAMESPACE = "http://schemas.microsoft.com/office/drawing/2012/chart";
const OF_LABELS = "{CE6537A1-D6FC-4f65-9D91-7224C49458BB}";
const OF_SERIES = "{02D57815-91ED-43cb-92C2-25804820EDAC}";
/** No value of the point beside its name. */
const NO_VALUES = ["LegendKey", "Val", "CatName", "SerName", "Percent", "BubbleSize"]
  .map((what) => `<c:show${what} val="0"/>`)
  .join("");
const LOOK =
  "<c:spPr><a:noFill/><a:ln><a:noFill/></a:ln></c:spPr>" +
  '<c:txPr><a:bodyPr/><a:lstStyle/><a:p><a:pPr><a:defRPr sz="800"/></a:pPr><a:endParaRPr lang="en-US"/></a:p></c:txPr>' +
  `<c:dLblPos val="t"/>${NO_VALUES}`;

/** `named`: by key, the names of a series' points. */
export function withPointNames(chart: string, named: ReadonlyMap<string, PointNames>): string {
  return chart.replace(SERIES, (series) => {
    const [labels = "", key = ""] = LABELS.exec(series) ?? [];
    const points = named.get(key);
    if (points === undefined) return series;
    return series
      .replace(labels, () => labelsXml(points))
      .replace("</c:ser>", () => `${extension(OF_SERIES, rangeXml(points))}</c:ser>`);
  });
}

function labelsXml({ names }: PointNames): string {
  const own = names.map((name, i) => (name === "" ? "" : labelXml(i)));
  const all = extension(OF_LABELS, '<c15:showDataLabelsRange val="1"/><c15:showLeaderLines val="0"/>');
  return `<c:dLbls>${own.join("")}${LOOK}${all}</c:dLbls>`;
}

/** A field in place of the name: it stands in the cell. */
function labelXml(point: number): string {
  const id = `{00000000-0000-4000-8000-${String(point + 1).padStart(12, "0")}}`;
  const field = `<a:fld id="${id}" type="CELLRANGE"><a:rPr lang="en-US"/><a:pPr/><a:t>[CELLRANGE]</a:t></a:fld>`;
  return (
    `<c:dLbl><c:idx val="${String(point)}"/><c:tx><c:rich><a:bodyPr/><a:lstStyle/><a:p>${field}` +
    `<a:endParaRPr lang="en-US"/></a:p></c:rich></c:tx><c:dLblPos val="t"/>${NO_VALUES}` +
    `${extension(OF_LABELS, '<c15:dlblFieldTable/><c15:showDataLabelsRange val="1"/>')}</c:dLbl>`
  );
}

function rangeXml({ cells, names }: PointNames): string {
  const kept = names.map((name, i) =>
    name === "" ? "" : `<c:pt idx="${String(i)}"><c:v>${markup(name)}</c:v></c:pt>`,
  );
  return (
    `<c15:datalabelsRange><c15:f>${markup(cells)}</c15:f><c15:dlblRangeCache>` +
    `<c:ptCount val="${String(names.length)}"/>${kept.join("")}</c15:dlblRangeCache></c15:datalabelsRange>`
  );
}

function extension(uri: string, parts: string): string {
  return `<c:extLst><c:ext uri="${uri}" xmlns:c15="${NAMESPACE}">${parts}</c:ext></c:extLst>`;
}
