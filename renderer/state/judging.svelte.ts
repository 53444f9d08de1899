import { Memory } from '../../core/base/memory.ts';
import { judgedWell } from '../../core/judging/judgedWell.ts';
import { practiceOf } from '../../core/practice/choosePractice.ts';
import type { Judgement } from '../../core/practice/judgeWell.ts';
import type { Practice, PracticeFile } from '../../core/practice/practice.ts';
import type { WellModel } from '../../core/model/wellModel.ts';
import type { GuidelineSet } from '../../core/water/guidelines/guidelineSet.ts';
import type { WellRecord } from '../../core/record/schema.ts';

/** Milliseconds that judging may take of the frame that shows a letter. */
const shareOfFrame = 2;
/** Times in a row that judging must take longer to count as slow. */
const few = 3;
/** Milliseconds of rest after a letter before a well that takes longer is judged. */
const pause = 40;

/** What is judged, and by what. */
interface Case {
  readonly record: WellRecord;
  readonly model: WellModel;
  readonly practice: Practice;
  readonly guidelines: GuidelineSet;
}

interface Judged {
  readonly of: Case;
  readonly judgement: Judgement;
  readonly defect?: string;
}

const isSame = (one: Case, other: Case) =>
  one.record === other.record &&
  one.practice === other.practice &&
  one.guidelines === other.guidelines;

/**
 * An open well as its practice judges it. It is judged in the frame that shows a letter as long as
 * that is quick; else letters come first, and what was judged before stands until the pause after
 * them.
 */
export class Judging {
  readonly #judged;
  readonly #practice;
  readonly #memory = new Memory();
  /** What was judged in the pause. */
  #late = $state.raw<Judged | undefined>();
  #last: Judged | undefined;
  /** Milliseconds that judging took the last few times; the first time is slow on any machine. */
  #took: readonly number[] = [];
  #waiting: ReturnType<typeof setTimeout> | undefined;

  /** `resolved`: the well, with the guideline values that its samples are compared with. */
  constructor(resolved: () => Omit<Case, 'practice'>, own: () => readonly PracticeFile[]) {
    const named = $derived(resolved().record.identity?.practice);
    const method = $derived(resolved().record.bore?.method);
    this.#practice = $derived(
      practiceOf(
        {
          schemaVersion: 1,
          ...(named === undefined ? {} : { identity: { practice: named } }),
          ...(method === undefined ? {} : { bore: { method } }),
        },
        own(),
      ),
    );
    this.#judged = $derived(this.#judge({ ...resolved(), practice: this.#practice }));
  }

  /** The practice that the well is judged by, which may not be the one that its record names. */
  get practice(): Practice {
    return this.#practice;
  }

  get judgement(): Judgement {
    return this.#judged.judgement;
  }

  /** Set when the program could not judge the record: the judgement is that of before. */
  get defect(): string | undefined {
    return this.#judged.defect;
  }

  get #isSlow(): boolean {
    return this.#took.length === few && Math.min(...this.#took) > shareOfFrame;
  }

  #judge(asked: Case): Judged {
    const late = this.#late;
    if (late && isSame(late.of, asked)) return late;
    if (this.#last && this.#isSlow) {
      clearTimeout(this.#waiting);
      this.#waiting = setTimeout(() => (this.#late = this.#work(asked)), pause);
      return this.#last;
    }
    return this.#work(asked);
  }

  /** A defect in a rule must not take the page away from somebody who types. */
  #work(asked: Case): Judged {
    const { record, model, practice, guidelines } = asked;
    const start = performance.now();
    try {
      this.#last = {
        of: asked,
        judgement: judgedWell(record, model, practice, { guidelines, memory: this.#memory }),
      };
    } catch (thrown) {
      console.error(thrown);
      const judgement = this.#last?.judgement ?? { practice, verdicts: [], findings: [] };
      this.#last = { of: asked, judgement, defect: String(thrown) };
    }
    this.#took = [performance.now() - start, ...this.#took].slice(0, few);
    return this.#last;
  }
}
