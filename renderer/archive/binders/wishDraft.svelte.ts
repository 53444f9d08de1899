import type { Language } from '../../../core/base/language.ts';
import {
  volumeBounds,
  type BinderPaper,
  type BinderWish,
  type KeptBinder,
} from '../../../core/contract/binderShape.ts';
import type { WellFilter } from '../../../core/contract/listShape.ts';
import type { PaperName } from '../../../core/drawing/paper.ts';
import { SectionDraft } from './sectionDraft.svelte.ts';

/**
 * Which wells: all, those of the list as it stands, those that fit what the kept binder asks for, or
 * those that were chosen one by one.
 */
export type WellChoice = 'all' | 'listed' | 'kept' | 'picked';

function choiceOf({ filter, ids }: BinderWish['wells']): WellChoice {
  if (ids) return 'picked';
  return filter ? 'kept' : 'all';
}

/** A binder as it is being described. */
export class WishDraft {
  name = $state('');
  title = $state('');
  madeBy = $state('');
  language = $state<Language>('en');
  choice = $state<WellChoice>('all');
  /** Ids of the wells that were chosen one by one. */
  picked = $state.raw<readonly string[]>([]);
  sections = $state.raw<readonly SectionDraft[]>([]);
  papers = $state<Record<BinderPaper['kind'], boolean>>({
    asBuilt: true,
    layingOut: false,
    committee: false,
  });
  languages = $state<Record<BinderPaper['kind'], Language>>({
    asBuilt: 'en',
    layingOut: 'en',
    committee: 'en',
  });
  second = $state<Language | ''>('');
  paper = $state<PaperName>('A4');
  duplex = $state(true);
  backdrop = $state(true);
  attachments = $state(false);
  withIssued = $state(false);
  mostPages = $state<number | null>(volumeBounds.usual);
  /** What the kept binder says of what this form does not ask. */
  readonly kept: BinderWish | undefined;

  constructor(language: Language, title: string, kept?: KeptBinder) {
    this.kept = kept?.wish;
    this.language = language;
    this.title = title;
    this.languages = { asBuilt: language, layingOut: language, committee: language };
    if (kept) this.#take(kept);
  }

  #take({ name, wish }: KeptBinder) {
    this.name = name;
    this.title = wish.title;
    this.madeBy = wish.madeBy;
    this.language = wish.language;
    this.picked = wish.wells.ids ?? [];
    this.sections = wish.sections.map((section) => new SectionDraft(section));
    this.choice = choiceOf(wish.wells);
    for (const kind of ['asBuilt', 'layingOut', 'committee'] as const) {
      const paper = wish.papers.find((one) => one.kind === kind);
      this.papers[kind] = paper !== undefined;
      if (!paper) continue;
      const [first, second] = paper.kind === 'committee' ? paper.languages : [paper.language];
      this.languages[kind] = first ?? wish.language;
      if (paper.kind === 'committee') this.second = second ?? '';
    }
    this.paper = wish.paper;
    this.duplex = wish.duplex;
    this.backdrop = wish.backdrop;
    this.attachments = wish.attachments ?? false;
    this.withIssued = wish.withIssued ?? false;
    this.mostPages = wish.mostPages;
  }

  get pagesFit(): boolean {
    const { least, most } = volumeBounds;
    const pages = this.mostPages;
    return pages !== null && Number.isInteger(pages) && pages >= least && pages <= most;
  }

  get hasPaper(): boolean {
    return Object.values(this.papers).some(Boolean);
  }

  get hasWell(): boolean {
    return this.choice !== 'picked' || this.picked.length > 0;
  }

  get whole(): boolean {
    const asked = this.name.trim() !== '' && this.hasWell && this.hasPaper && this.pagesFit;
    return asked && this.sections.every(({ whole }) => whole);
  }

  /** All wells that it names. */
  get named(): readonly string[] {
    return [...this.picked, ...this.sections.flatMap(({ wellIds }) => wellIds)];
  }

  addSection(): void {
    this.sections = [...this.sections, new SectionDraft({ wellIds: [] })];
  }

  removeSection(section: SectionDraft): void {
    this.sections = this.sections.filter((one) => one !== section);
  }

  #chosenPapers(): BinderPaper[] {
    const { asBuilt, layingOut, committee } = this.papers;
    const { languages } = this;
    const second = this.second !== '' && this.second !== languages.committee ? [this.second] : [];
    return [
      ...(asBuilt ? [{ kind: 'asBuilt', language: languages.asBuilt } as const] : []),
      ...(layingOut ? [{ kind: 'layingOut', language: languages.layingOut } as const] : []),
      ...(committee
        ? [{ kind: 'committee', languages: [languages.committee, ...second] } as const]
        : []),
    ];
  }

  /** What shall be bound, with the filter that the list has now where that is chosen. */
  wish(listed: WellFilter): BinderWish {
    const wells: Record<WellChoice, BinderWish['wells']> = {
      all: {},
      listed: { filter: listed },
      kept: this.kept?.wells ?? {},
      picked: { ids: this.picked },
    };
    return {
      title: this.title.trim() || this.name.trim(),
      madeBy: this.madeBy.trim(),
      language: this.language,
      wells: wells[this.choice],
      papers: this.#chosenPapers(),
      paper: this.paper,
      duplex: this.duplex,
      sections: this.sections.map((section) => section.choice()),
      backdrop: this.backdrop,
      mostPages: this.mostPages ?? volumeBounds.usual,
      ...(this.attachments && { attachments: true }),
      ...(this.withIssued && { withIssued: true }),
    };
  }
}
