import type { Refusal } from '../../core/base/result.ts';
import { admitPractice } from '../../core/practice/admitPractice.ts';
import { withFigure, withoutFigure, withPrice } from '../../core/practice/editPractice.ts';
import { figures, type FigureId } from '../../core/practice/figures.ts';
import { holdPractice } from '../../core/practice/holdPractice.ts';
import type { Practice, PracticeFile, Source } from '../../core/practice/practice.ts';
import { shippedPractices } from '../../core/practice/shippedPractices.ts';
import type { Result } from '../../core/base/result.ts';
import { readNumber, writeNumber } from '../editors/fields/number.ts';
import { say } from '../parts/words.ts';
import { speech } from '../state/language.svelte.ts';

/** A figure as it is being written. */
export interface FigureText {
  readonly value: string;
  readonly title: string;
  readonly mark: Source['mark'];
}

type Texts<T> = Readonly<Partial<Record<string, T>>>;

function without<T>(texts: Texts<T>, key: string): Texts<T> {
  return Object.fromEntries(Object.entries(texts).filter(([one]) => one !== key));
}

/** A practice of the user as it is being changed, with the texts that are no figures yet. */
export class Draft {
  /** What is to be kept, but for texts that cannot be read yet. */
  file = $state.raw() as PracticeFile;
  /** By figure. */
  rows = $state.raw<Texts<FigureText>>({});
  /** By what is paid for. */
  prices = $state.raw<Texts<string>>({});
  readonly #before: PracticeFile | undefined;
  readonly #others: () => readonly PracticeFile[];
  readonly #admitted: Result<Practice>;
  /** The source that was written last: the next figure mostly comes from there too. */
  #lastSource: Pick<FigureText, 'title' | 'mark'> = { title: '', mark: 'read' };

  /** `before`: as the archive keeps it; absent for a new one. */
  constructor(
    file: PracticeFile,
    before: PracticeFile | undefined,
    others: () => readonly PracticeFile[],
  ) {
    this.file = file;
    this.#before = before;
    this.#others = others;
    this.#admitted = $derived(admitPractice(this.file, others()));
  }

  get refusal(): Refusal | undefined {
    return this.#admitted.ok ? undefined : this.#admitted.error;
  }

  /** With all that it takes from what it is based on; that alone where it cannot be held. */
  get held(): Practice {
    if (this.#admitted.ok) return this.#admitted.value;
    const base = this.#based();
    return { ...base, id: this.file.id, name: this.file.name, version: this.file.version };
  }

  get changed(): boolean {
    return this.unfit > 0 || JSON.stringify(this.file) !== JSON.stringify(this.#before);
  }

  /** Entries that are no figures and no prices yet. */
  get unfit(): number {
    return Object.keys(this.rows).length + Object.keys(this.prices).length;
  }

  /** What stands in a figure's row. */
  textOf(id: FigureId): FigureText {
    const typed = this.rows[id];
    if (typed) return typed;
    const { value, source } = this.held.figures[id];
    return { value: writeNumber(value), title: source.title[speech.language], mark: source.mark };
  }

  /** The practice sets the figure itself, or is about to. */
  isOwn(id: FigureId): boolean {
    return this.file.figures[id] !== undefined || this.rows[id] !== undefined;
  }

  /** What keeps a row from being a figure; undefined where nothing does. */
  faultOf(id: FigureId): string | undefined {
    const typed = this.rows[id];
    if (!typed) return undefined;
    const reading = readFigure(id, typed.value);
    if (!reading.ok) return reading.sentence;
    return reading.value === undefined ? say.reading.needed : say.practices.needsSource;
  }

  /** Takes a text of a row; a value that is not the inherited one needs a source of its own. */
  write(id: FigureId, part: Partial<FigureText>) {
    const before = this.textOf(id);
    const fresh = this.isOwn(id) ? before : { ...before, ...this.#lastSource };
    const text = { ...fresh, ...part };
    const reading = readFigure(id, text.value);
    const title = text.title.trim();
    if (!reading.ok || reading.value === undefined || title === '') {
      this.rows = { ...this.rows, [id]: text };
      return;
    }
    this.#lastSource = { title, mark: text.mark };
    this.rows = without(this.rows, id);
    const value = reading.value as number;
    this.file = withFigure(this.file, id, { value, title, mark: text.mark });
  }

  /** The figure of what the practice is based on holds again. */
  takeBack(id: FigureId) {
    this.rows = without(this.rows, id);
    this.file = withoutFigure(this.file, id);
  }

  priceText(key: string): string {
    const price = this.held.prices[key];
    return this.prices[key] ?? (price ? writeNumber(price.each) : '');
  }

  /** Takes what one of something costs; `per` says of what. */
  writePrice(key: string, text: string, per: string) {
    const reading = readNumber(text, { least: 0 });
    this.prices = reading.ok ? without(this.prices, key) : { ...this.prices, [key]: text };
    if (!reading.ok) return;
    const price = reading.value === undefined ? undefined : { each: reading.value as number, per };
    this.file = withPrice(this.file, key, price);
  }

  #based(): Practice {
    const held = holdPractice(this.file.basedOn ?? '', [...this.#others(), ...shippedPractices]);
    const general = held.ok ? held : holdPractice('handDrilled', shippedPractices);
    if (!general.ok) throw new Error(general.error.sentence);
    return general.value;
  }
}

function readFigure(id: FigureId, text: string) {
  return readNumber(text, figures[id] === '%' ? { least: 0, most: 100 } : { least: 0 });
}
