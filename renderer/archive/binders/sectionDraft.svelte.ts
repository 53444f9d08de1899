import { sectionBounds } from '../../../core/contract/binderShape.ts';
import type { SectionChoice } from '../../../core/drawing/binder/binder.ts';

/** A section through wells as it is being described. */
export class SectionDraft {
  title = $state('');
  /** In the order in which the section meets them. */
  wellIds = $state.raw<readonly string[]>([]);
  readonly #joins: SectionChoice['joins'];

  constructor({ title = '', wellIds, joins }: SectionChoice) {
    this.title = title;
    this.wellIds = wellIds;
    this.#joins = joins;
  }

  get whole(): boolean {
    return this.wellIds.length >= sectionBounds.leastWells;
  }

  /** Lines between wells that are still among its wells stay as they were asked for. */
  choice(): SectionChoice {
    const title = this.title.trim();
    const joins = this.#joins?.filter((join) =>
      [join.from, join.to].every(({ wellId }) => this.wellIds.includes(wellId)),
    );
    return {
      ...(title !== '' && { title }),
      wellIds: this.wellIds,
      ...(joins?.length && { joins }),
    };
  }
}
