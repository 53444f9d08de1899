import type { Language } from '../../base/language.ts';
import type { FillKind } from '../../record/annulus.ts';
import type { DrillingMethod } from '../../record/bore.ts';
import type { PumpKind } from '../../record/headworks.ts';
import type { WellState } from '../../record/identity.ts';
import type { GrainClass } from '../../record/log.ts';
import type { Material } from '../../record/materials.ts';
import type { ComponentKind } from '../../record/strings.ts';
import type { ColumnName } from '../parts/columnNames.ts';

/** How a material is said: as the principal part, as a second part, and in a legend. */
export interface MaterialWord {
  readonly noun: string;
  /** As in `sandy`; materials that make no adjective say `with cobbles`. */
  readonly second: string;
  /** What adjectives beside the noun agree with; the masculine where absent. */
  readonly agrees?: keyof Forms;
}

/** An adjective's other forms, in a language that has them. The plural is masculine. */
export interface Forms {
  readonly feminine: string;
  readonly plural: string;
}

/** Every word that the sheets print, in one language. A missing key does not compile. */
export interface SheetWords {
  readonly language: Language;
  readonly decimalMark: '.' | ',';
  /** As it follows a word, with the space that some languages set before it. */
  readonly colon: string;
  readonly compass: Readonly<Record<'north' | 'south' | 'east' | 'west', string>>;
  readonly materials: Readonly<Record<Material, MaterialWord>>;
  /** Whether second materials stand behind the principal one, as in `argile sableuse`. */
  readonly secondsFollow: boolean;
  /** Before an adjective. */
  readonly degrees: Readonly<Record<'slightly' | 'plain' | 'very', string>>;
  /** Around a second material `{what}` that is no adjective. */
  readonly amounts: Readonly<Record<'slightly' | 'very', string>>;
  /** Forms of the adjectives of this catalogue by their masculine; those that have but one lack. */
  readonly agreement: Readonly<Record<string, Forms>>;
  readonly grains: Readonly<Record<GrainClass, string>>;
  readonly weathering: Readonly<
    Record<'fresh' | 'slightly' | 'moderately' | 'highly' | 'completely', string>
  >;
  readonly moisture: Readonly<Record<'dry' | 'moist' | 'wet' | 'waterBearing', string>>;
  readonly fractured: string;
  readonly noDescription: string;
  readonly fills: Readonly<Record<FillKind | 'unrecorded', string>>;
  readonly sanitarySeal: string;
  readonly pieces: Readonly<Record<ComponentKind, string>>;
  readonly states: Readonly<Record<WellState, string>>;
  readonly methods: Readonly<Record<DrillingMethod, string>>;
  readonly pumps: Readonly<Record<PumpKind, string>>;
  readonly roles: Readonly<
    Record<'supervisor' | 'contractor' | 'client' | 'committee' | 'witness', string>
  >;
  /** Short: a head is as wide as its column. */
  readonly columns: Readonly<Record<ColumnName, string>>;
  readonly columnUnits: Readonly<Record<'depth' | 'rate' | 'sieve', string>>;
  readonly legend: Readonly<
    Record<
      | 'title'
      | 'rest'
      | 'pumping'
      | 'strike'
      | 'sample'
      | 'joint'
      | 'centraliser'
      | 'screen'
      | 'cap'
      | 'gradual'
      | 'uncertain'
      | 'intake'
      | 'mixed'
      | 'grain',
      string
    >
  >;
  readonly quantities: Readonly<
    Record<
      | 'title'
      | 'range'
      | 'computed'
      | 'poured'
      | 'share'
      | 'hole'
      | 'contents'
      | 'waterInside'
      | 'tally'
      | 'count'
      | 'sacks',
      string
    >
  >;
  readonly facts: Readonly<
    Record<
      | 'title'
      | 'position'
      | 'elevation'
      | 'drilled'
      | 'method'
      | 'rest'
      | 'development'
      | 'test'
      | 'quality'
      | 'disinfection'
      | 'pump'
      | 'headworks'
      | 'users'
      | 'households'
      | 'sand'
      | 'drawdown'
      | 'perMetre'
      | 'results'
      | 'pad'
      | 'drain'
      | 'below',
      string
    >
  >;
  readonly title: Readonly<
    Record<
      | 'documentType'
      | 'client'
      | 'programme'
      | 'contract'
      | 'contractor'
      | 'supervisor'
      | 'approval'
      | 'number'
      | 'sheet'
      | 'revision'
      | 'date'
      | 'status'
      | 'draft'
      | 'typed'
      | 'issued'
      | 'language'
      | 'place'
      | 'district'
      | 'titleField'
      | 'depthScale'
      | 'widthScale'
      | 'datum'
      | 'datumText'
      | 'coordinates'
      | 'coordinatesText'
      | 'marks'
      | 'name'
      | 'markDate'
      | 'planned'
      | 'asBuilt'
      | 'notBuilt',
      string
    >
  >;
  /** Under the code that a telephone reads; three short lines. */
  readonly wellCode: string;
  readonly scaleBars: Readonly<Record<'check' | 'depth' | 'width', string>>;
  readonly casingTop: string;
  readonly aboveGround: string;
  readonly holeFoot: string;
  readonly holeFound: string;
  readonly slot: string;
  readonly openArea: string;
  /** Of depths that a broken axis leaves out. */
  readonly notDrawn: string;
  readonly matchLine: string;
  readonly continuedOn: string;
  readonly continuedFrom: string;
  readonly findings: string;
  /** Before why a finding remains. */
  readonly explained: string;
  readonly moreFindings: string;
  /** Before the name of the practice that the well is judged by. */
  readonly judgedBy: string;
  /** What the sheet does not stand for; one line of an upright A4. */
  readonly disclaimer: string;
  readonly notes: string;
  /** `cut` stands behind an ellipsis; `missing` in the frame of a picture that is not at hand. */
  readonly photos: Readonly<Record<'title' | 'photo' | 'missing' | 'cut', string>>;
  readonly tally: Readonly<
    Record<
      | 'title'
      | 'goesOn'
      | 'more'
      | 'piece'
      | 'what'
      | 'length'
      | 'insertion'
      | 'from'
      | 'to'
      | 'string',
      string
    >
  >;
  readonly diameter: string;
  /** Before the figure of a pipe of which only the inside is known. */
  readonly insideDiameter: string;
  readonly of: string;
  readonly hours: string;
  readonly minutes: string;
}
