import { depthFigure, significantFigure } from '../../figures.ts';
import type { BinderKit } from '../binder.ts';
import type { BinderWell } from '../binderWell.ts';
import { sayNumber, sayState, sayVillage } from '../say.ts';
import {
  figureOrDash,
  medianFigure,
  metresOrDash,
  screensFigure,
  unknown,
  yieldFigure,
} from './figures.ts';
import type { WellColumn } from './wellTable.ts';

type Key = 'drilledM' | 'casedM' | 'restM';

function common(kit: BinderKit): Readonly<Record<'number' | 'village' | 'page', WellColumn>> {
  const { heads } = kit.own.tables;
  return {
    number: { title: heads.number, share: 22, says: (well) => sayNumber(kit, well) },
    village: { title: heads.village, share: 29, says: ({ village }) => sayVillage(kit, village) },
    page: {
      title: heads.page,
      share: 14,
      anchor: 'end',
      says: ({ id }, places) => places.says(places.pageOf(id)),
    },
  };
}

function metres(kit: BinderKit, title: string, key: Key): WellColumn {
  return {
    title,
    share: 16,
    anchor: 'end',
    says: (well) => metresOrDash(kit, well[key]),
    sums: (wells) =>
      medianFigure(
        kit,
        wells.map((well) => well[key]),
        depthFigure,
      ),
  };
}

export function depthColumns(kit: BinderKit): WellColumn[] {
  const { heads } = kit.own.tables;
  const { number, village, page } = common(kit);
  return [
    number,
    village,
    {
      title: heads.year,
      share: 10,
      says: ({ year }) => (year === undefined ? unknown : String(year)),
    },
    { title: heads.state, share: 27, says: ({ state }) => sayState(kit, state) },
    metres(kit, heads.drilled, 'drilledM'),
    metres(kit, heads.cased, 'casedM'),
    metres(kit, heads.rest, 'restM'),
    { title: heads.screens, share: 24, anchor: 'end', says: (well) => screensFigure(kit, well) },
    page,
  ];
}

const rateOf = (well: BinderWell) => well.yield?.m3h;

export function yieldColumns(kit: BinderKit): WellColumn[] {
  const { heads } = kit.own.tables;
  const { number, village, page } = common(kit);
  return [
    number,
    village,
    {
      title: heads.aquifer,
      share: 24,
      says: ({ aquifer }) => (aquifer ? kit.words.materials[aquifer].noun : unknown),
    },
    {
      title: heads.pump,
      share: 34,
      says: ({ pump }) => (pump?.kind ? kit.words.pumps[pump.kind] : unknown),
    },
    {
      title: heads.yield,
      share: 19,
      anchor: 'end',
      says: (well) => yieldFigure(kit, well.yield),
      sums: (wells) => medianFigure(kit, wells.map(rateOf), significantFigure),
    },
    {
      title: heads.perMetre,
      share: 18,
      anchor: 'end',
      says: ({ specificCapacity }) => figureOrDash(kit, specificCapacity),
      sums: (wells) =>
        medianFigure(
          kit,
          wells.map((well) => well.specificCapacity),
          significantFigure,
        ),
    },
    {
      title: heads.intake,
      share: 16,
      anchor: 'end',
      says: ({ pump }) => metresOrDash(kit, pump?.intakeM),
      sums: (wells) =>
        medianFigure(
          kit,
          wells.map(({ pump }) => pump?.intakeM),
          depthFigure,
        ),
    },
    page,
  ];
}
