import type { Item } from '../../items.ts';
import { again, type Kit } from '../../kit.ts';
import type { SwitchedColumn } from '../../parts/columnNames.ts';
import type { View } from '../../parts/columns.ts';
import { drawDescriptions } from '../../parts/descriptions.ts';
import { drawGround } from '../../parts/ground.ts';
import { drawColour } from '../../parts/log/colour.ts';
import { drawGrain } from '../../parts/log/grain.ts';
import { drawMoisture } from '../../parts/log/moisture.ts';
import { drawRate } from '../../parts/log/rate.ts';
import { drawSamples } from '../../parts/log/samples.ts';
import { drawSieve } from '../../parts/log/sieve.ts';
import { drawStrikes } from '../../parts/log/strikes.ts';
import { shownPart } from '../../scale.ts';
import type { LoggedParts } from './logColumns.ts';

/**
 * The ground and the columns beside it, those that the view shows. Each is handed its own part of
 * the log, so that a change of another leaves it as it was.
 */
export function drawLog(kit: Kit, parts: LoggedParts, view: View, sheet: number): Item[] {
  const on = (part: string) => `${part} on ${sheet}`;
  const strata = parts.description.filter(({ fromM, toM }) => shownPart(view.axis, fromM, toM));
  const draw: Readonly<Record<SwitchedColumn, () => Item>> = {
    strikes: () => again(kit, on('strikes'), drawStrikes, parts.strikes, view),
    samples: () => again(kit, on('samples'), drawSamples, parts.samples, view),
    grain: () => again(kit, on('grain'), drawGrain, parts.grain, view),
    description: () => again(kit, on('descriptions'), drawDescriptions, strata, view),
    colour: () => again(kit, on('colour'), drawColour, parts.colour, view),
    moisture: () => again(kit, on('moisture'), drawMoisture, parts.moisture, view),
    sieve: () => again(kit, on('sieve'), drawSieve, parts.sieve, view),
    rate: () => again(kit, on('rate'), drawRate, parts.rate, view),
  };
  const columns = Object.entries(draw) as [SwitchedColumn, () => Item][];
  const shown = columns.filter(([name]) => view.columns[name].width > 0);
  return [again(kit, on('ground'), drawGround, strata, view), ...shown.map(([, one]) => one())];
}
