import { readForm } from './readForm.ts';
import { readUnit, type ReadUnit } from './readUnit.ts';
import { substances, type Substance } from './substances.ts';

/** A unit, and the form that a figure is told in. */
export interface ToldIn {
  readonly unit?: string | undefined;
  readonly as?: string | undefined;
}

/** How to get from one to the other; `form` is true where the form changes. */
export interface Conversion {
  readonly ok: true;
  readonly factor: number;
  readonly from: ReadUnit;
  readonly form: boolean;
}

export type Converted = Conversion | { readonly ok: false; readonly why: 'unit' | 'form' };

const unitTrouble = { ok: false, why: 'unit' } as const;
const formTrouble = { ok: false, why: 'form' } as const;

/** Milligrams in one base unit of a kind, and the form that they are told in. */
interface Mass {
  readonly mg: number;
  readonly form: string;
}

/** A mole or a charge of the substance in milligrams; of hardness and alkalinity, as lime. */
function massOf({ kind }: ReadUnit, { forms, mole, charge }: Substance): Mass | undefined {
  const lime = forms['CaCO3'];
  if (mole === undefined)
    return lime === undefined
      ? undefined
      : { mg: kind === 'amount' ? 2 * lime : lime, form: 'CaCO3' };
  const grams = forms[mole]!;
  if (kind === 'amount') return { mg: grams, form: mole };
  return charge === undefined ? undefined : { mg: grams / Math.abs(charge), form: mole };
}

function sourceMass(from: ToldIn, read: ReadUnit, substance: Substance): Mass | 'unit' | 'form' {
  if (read.kind === 'amount' || read.kind === 'charge') return massOf(read, substance) ?? 'unit';
  if (read.kind === 'hardness')
    return substance.forms['CaCO3'] === undefined ? 'unit' : { mg: 1, form: 'CaCO3' };
  if (read.kind !== 'mass') return 'unit';
  const form = formOf(from, read, substance);
  return form === undefined ? 'form' : { mg: 1, form };
}

/** The form beside a figure, else the one in its unit, else the usual one. */
function formOf({ as }: ToldIn, unit: ReadUnit, { usual }: Substance): string | undefined {
  if (as !== undefined && as.trim() !== '') return readForm(as) ?? as;
  return unit.as ?? usual;
}

/** What is told without a unit is a plain number where the other is one, as pH is. */
function readSource({ unit }: ToldIn, target: ReadUnit): ReadUnit | undefined {
  if (unit !== undefined) return readUnit(unit);
  return target.kind === 'plain' ? { kind: 'plain', toBase: 1 } : undefined;
}

/**
 * The factor from one unit and form of a parameter to another. Not found, `form`, where the form
 * that the figure is told in was not written and is not settled by custom; `unit`, where a unit is
 * absent, unknown, or of a kind that does not convert.
 */
export function conversion(parameter: string, from: ToldIn, to: ToldIn): Converted {
  const target = to.unit === undefined ? undefined : readUnit(to.unit);
  const source = target && readSource(from, target);
  if (!target || !source) return unitTrouble;
  const scale = source.toBase / target.toBase;
  const substance = substances[parameter];
  if (target.kind !== 'mass' || (source.kind === 'mass' && !substance))
    return source.kind === target.kind
      ? { ok: true, factor: scale, from: source, form: false }
      : unitTrouble;
  if (!substance) return unitTrouble;
  const mass = sourceMass(from, source, substance);
  if (mass === 'unit') return unitTrouble;
  if (mass === 'form') return formTrouble;
  const wanted = formOf(to, target, substance) ?? mass.form;
  const [grams, told] = [substance.forms[wanted], substance.forms[mass.form]];
  if (grams === undefined || told === undefined) return formTrouble;
  return {
    ok: true,
    factor: (scale * mass.mg * grams) / told,
    from: source,
    form: wanted !== mass.form,
  };
}

/** Forms that a parameter may be told in where nobody wrote which; empty where custom settles it. */
export function openForms(parameter: string): readonly string[] {
  const substance = substances[parameter];
  return substance && substance.usual === undefined ? Object.keys(substance.forms) : [];
}
