/** Grams of a mole, from IUPAC's standard atomic weights (from memory). */
const atoms = {
  H: 1.008,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  F: 18.998,
  Na: 22.99,
  Mg: 24.305,
  Si: 28.085,
  P: 30.974,
  S: 32.06,
  Cl: 35.45,
  K: 39.098,
  Ca: 40.078,
  Mn: 54.938,
  Fe: 55.845,
  As: 74.922,
  Pb: 207.2,
  U: 238.029,
};

const { H, C, N, O, F, Na, Mg, Si, P, S, Cl, K, Ca, Mn, Fe, As, Pb, U } = atoms;
const CaCO3 = Ca + C + 3 * O;
const HCO3 = H + C + 3 * O;

/** What a parameter is, as far as conversions need it. */
export interface Substance {
  /** Grams in each of its forms that hold one and the same mole (for hardness, one equivalent). */
  readonly forms: Readonly<Record<string, number>>;
  /** The form whose grams are a mole, and the charge of that. */
  readonly mole?: string;
  readonly charge?: number;
  /** The form that is meant where nobody wrote one; absent where that is not settled. */
  readonly usual?: string;
}

const ion = (form: string, grams: number, charge?: number): Substance => ({
  forms: { [form]: grams },
  mole: form,
  usual: form,
  ...(charge === undefined ? {} : { charge }),
});

/** Hardness and alkalinity are told as the lime that would have it: half a mole has one charge. */
const asLime = { CaCO3: CaCO3 / 2 };

/** By the keys of parameters. Those that are not here are converted by unit alone. */
export const substances: Readonly<Record<string, Substance | undefined>> = {
  nitrate: { forms: { NO3: N + 3 * O, N }, mole: 'NO3', charge: -1 },
  nitrite: { forms: { NO2: N + 2 * O, N }, mole: 'NO2', charge: -1 },
  ammonia: { forms: { NH4: N + 4 * H, NH3: N + 3 * H, N }, mole: 'NH4', charge: 1 },
  phosphate: { forms: { PO4: P + 4 * O, P }, mole: 'PO4' },
  sulfate: { forms: { SO4: S + 4 * O, S }, mole: 'SO4', charge: -2, usual: 'SO4' },
  silica: { forms: { SiO2: Si + 2 * O, Si }, mole: 'SiO2' },
  bicarbonate: { forms: { HCO3, ...asLime }, mole: 'HCO3', charge: -1, usual: 'HCO3' },
  alkalinity: { forms: { ...asLime, HCO3 }, usual: 'CaCO3' },
  hardness: { forms: { ...asLime, CaO: (Ca + O) / 2, Ca: Ca / 2 }, usual: 'CaCO3' },
  calcium: { forms: { Ca, CaCO3 }, mole: 'Ca', charge: 2, usual: 'Ca' },
  magnesium: { forms: { Mg, CaCO3 }, mole: 'Mg', charge: 2, usual: 'Mg' },
  sodium: ion('Na', Na, 1),
  potassium: ion('K', K, 1),
  chloride: ion('Cl', Cl, -1),
  fluoride: ion('F', F, -1),
  iron: ion('Fe', Fe),
  manganese: ion('Mn', Mn),
  arsenic: ion('As', As),
  lead: ion('Pb', Pb),
  uranium: ion('U', U),
};
