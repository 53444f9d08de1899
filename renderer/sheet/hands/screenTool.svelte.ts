import type { DepthM } from '../../../core/base/units.ts';
import { roundDepth } from '../../../core/model/range.ts';
import { recutForScreen, type NoScreen, type Recut } from '../../../core/model/screen.ts';
import { stringLabel } from '../../../core/model/setting.ts';
import type { StringModel } from '../../../core/model/wellModel.ts';
import type { Result } from '../../../core/base/result.ts';
import { say, sheetWords } from '../../parts/words.ts';
import type { Folder } from '../../state/folder.svelte.ts';
import { putScreen } from '../../state/hands/putScreen.ts';
import type { LiveDrawing } from '../liveDrawing.svelte.ts';
import { metres } from './says.ts';

/** A screen as it is being drawn. */
export interface Stroke {
  readonly string: StringModel;
  readonly startM: DepthM;
  readonly endM: DepthM;
  readonly made: Result<Recut, NoScreen>;
}

/** Why there is no screen there, in words. */
function sayNoScreen(error: NoScreen): string {
  const words = say.hands.screen;
  if (error.why === 'tooShort') return words.tooShort(metres(error.leastM));
  if (error.why === 'isScreen') return words.isScreen;
  const { fromM, toM } = error.atM;
  return words.inTheWay(sheetWords().pieces[error.kind], metres(fromM), metres(toM));
}

/** A depth that was typed, with a decimal point or comma. */
function depthIn(text: string): DepthM | undefined {
  const value = Number(text.trim().replace(',', '.').replace('−', '-'));
  return text.trim() === '' || !Number.isFinite(value) ? undefined : value;
}

/** Putting a screen into a string, drawn over it or typed. */
export class ScreenTool {
  on = $state(false);
  /** Index of the string that typed depths go to; the innermost where nobody chose. */
  string = $state<number | undefined>();
  from = $state('');
  to = $state('');
  said = $state('');
  stroke = $state.raw<Stroke | undefined>();

  readonly #folder: Folder;
  readonly #live: Pick<LiveDrawing, 'hold' | 'letGo'>;

  constructor(folder: Folder, live: Pick<LiveDrawing, 'hold' | 'letGo'>) {
    this.#folder = folder;
    this.#live = live;
  }

  get strings(): { index: number; label: string }[] {
    const { record } = this.#folder.desk;
    return this.#folder.model.strings.map(({ index }) => ({
      index,
      label: say.hands.screen.stringName(String(stringLabel(record.strings?.[index], index))),
    }));
  }

  toggle() {
    this.cancel();
    this.on = !this.on;
    this.said = '';
  }

  /** The string that is meant at a depth: the one asked for, else the last set that stands there. */
  stringAt(depthM: DepthM, asked?: number): StringModel | undefined {
    const there = this.#folder.model.strings.filter(
      ({ topM, bottomM }) => topM <= depthM && depthM <= bottomM,
    );
    return there.find(({ index }) => index === asked) ?? there.at(-1);
  }

  #cut(string: StringModel, oneM: DepthM, otherM: DepthM): Result<Recut, NoScreen> {
    // What is lifted is no basis: each stroke cuts the tally as it was.
    const record = this.#folder.desk.record.strings?.[string.index];
    if (!record) return { ok: false, error: { why: 'isScreen' } };
    return recutForScreen(record, string, oneM, otherM);
  }

  begin(string: StringModel, depthM: DepthM) {
    this.said = '';
    this.#live.hold();
    this.#show(string, depthM, depthM);
  }

  #show(string: StringModel, startM: DepthM, endM: DepthM) {
    this.#folder.lift();
    const made = this.#cut(string, startM, endM);
    this.stroke = { string, startM, endM, made };
    if (made.ok) this.#folder.lift((desk) => putScreen(desk, string.index, made.value));
  }

  draw(endM: DepthM) {
    if (this.stroke && this.stroke.endM !== endM)
      this.#show(this.stroke.string, this.stroke.startM, endM);
  }

  /** What the stroke would make, or why it makes nothing. */
  get figures(): string {
    if (!this.stroke) return '';
    const { made } = this.stroke;
    if (!made.ok) return sayNoScreen(made.error);
    const { fromM, toM } = made.value;
    return say.hands.screen.made(metres(fromM), metres(toM), metres(roundDepth(toM - fromM)));
  }

  drop() {
    const { stroke } = this;
    this.cancel();
    if (stroke) this.#make(stroke.string, stroke.made);
  }

  cancel() {
    if (!this.stroke) return;
    this.stroke = undefined;
    this.#folder.lift();
    this.#live.letGo();
  }

  #make(string: StringModel, made: Result<Recut, NoScreen>) {
    if (!made.ok) {
      this.said = sayNoScreen(made.error);
      return;
    }
    const { fromM, toM, components, origins } = made.value;
    const before = this.#folder.desk.record.strings?.[string.index]?.components ?? [];
    this.#folder.edit((desk) => putScreen(desk, string.index, made.value));
    const at = components.findIndex(
      ({ kind }, index) => kind === 'screen' && before[origins[index] ?? 0]?.kind !== 'screen',
    );
    this.#folder.selected = `${string.path}.components[${at}]`;
    this.said = say.hands.screen.done(metres(fromM), metres(toM));
  }

  /** Puts in what was typed. */
  put() {
    const [oneM, otherM] = [depthIn(this.from), depthIn(this.to)];
    if (oneM === undefined || otherM === undefined) {
      this.said = say.hands.screen.unread;
      return;
    }
    const { strings } = this.#folder.model;
    const string = strings.find(({ index }) => index === this.string) ?? strings.at(-1);
    if (string) this.#make(string, this.#cut(string, oneM, otherM));
    else this.said = say.hands.screen.beside;
  }
}
