/** A place for a figure, then a blank, then a unit of the sentences of findings, tests and pumps. */
const beforeUnit = /(?<=\}) (?=(?:%|m³\/h|[dj]²\/m⁵|km|mm|min|kW|kWh|W|m|h|l|g)(?![\p{L}\d]))/gu;

/** Binds a unit to the figure before it, so that a line does not end between both. */
export function bindUnits(template: string): string {
  return template.replace(beforeUnit, '\u00a0');
}
