import { ok } from '../../core/base/result.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import { practiceOf } from '../../core/practice/choosePractice.ts';
import { costOf, type Costs } from '../../core/quantities/costOf.ts';
import type { Quantity, QuantityGroup } from '../../core/quantities/quantity.ts';
import { reckonQuantities } from '../../core/quantities/reckonQuantities.ts';
import {
  quantityWords,
  sayAmount,
  sayInput,
  sayMissing,
  sayOf,
} from '../../core/quantities/sayQuantity.ts';
import type { Command, World } from './command.ts';
import { tellErrors } from './recordErrors.ts';
import { onlyWord, readRecordFile } from './readInput.ts';

const words = quantityWords('en');

/** Spaces that keep a number and its unit together are plain ones in a terminal. */
function plain(text: string): string {
  return text.replaceAll('\u00a0', ' ');
}

function line(quantity: Quantity): string {
  const { id, formula, inputs } = quantity;
  const name = words.names[id].padEnd(36);
  const amount = plain(sayAmount(quantity, 'en')).padStart(11);
  const how = [formula, ...inputs.map((input) => plain(sayInput(input, 'en')))].join('; ');
  const of = plain(sayOf(quantity, 'en'));
  return `  ${name} ${amount}  ${of === '' ? '' : `${of}: `}${how}`;
}

function printGroup({ id, quantities, missing }: QuantityGroup, world: World) {
  if (quantities.length + missing.length === 0) return;
  world.print(words.groups[id]);
  for (const quantity of quantities) world.print(line(quantity));
  for (const one of missing)
    world.print(`  not known: ${plain(sayMissing(one, 'en'))} (${one.path})`);
}

function printCosts({ currency = '', lines, sum, unpriced, incomplete }: Costs, world: World) {
  world.print('Costs');
  for (const { key, amount, price, cost } of lines)
    world.print(
      `  ${words.prices[key].padEnd(36)} ${cost.toFixed(2).padStart(11)}  ${Number(amount.toFixed(2))} at ${price.each} ${currency} a ${price.per}`,
    );
  world.print(`  ${'sum'.padEnd(36)} ${sum.toFixed(2).padStart(11)}  ${currency}`);
  for (const key of unpriced) world.print(`  no price: ${words.prices[key]}`);
  for (const id of incomplete) world.print(`  not in the sum, in part: ${words.groups[id]}`);
}

/** `quantities`: what a well takes, each with its formula and inputs, by its practice. */
export const quantities: Command = {
  name: 'quantities',
  takes: 'RECORD.json',
  says: 'Prints the material, water and trips that a well takes, each with its formula and inputs',
  options: {},
  run({ words: given, options }, world) {
    const file = onlyWord(given, 'quantities');
    if (!file.ok) return file;
    const read = readRecordFile(file.value, world);
    if (!read.ok) return read;
    const { record, troubles } = read.value;
    const model = resolveWell(record);
    const practice = practiceOf(record);
    const reckoned = reckonQuantities(record, model, practice);
    const costs = costOf(reckoned, practice);
    if (options['json'] === true)
      world.give(JSON.stringify({ ...reckoned, ...(costs && { costs }) }, null, 2));
    else {
      world.print(`Practice: ${practice.name.en}, ${practice.version}`);
      for (const group of reckoned.groups) printGroup(group, world);
      if (costs) printCosts(costs, world);
    }
    return ok(tellErrors(file.value, troubles, model.findings, world) ? 1 : 0);
  },
};
