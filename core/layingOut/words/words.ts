import type { ProposalKind } from '../../record/layingOut.ts';
import type { ComparedPart } from '../differences.ts';
import type { MissingInput, ObstacleCode, TallyLine, WhyCode } from '../proposal.ts';

/**
 * What laying out says in one language. `{name}` stands for a value; its unit is written beside it.
 */
export interface LayingOutWords {
  /** Kinds of proposal, as titles. */
  readonly kinds: Readonly<Record<ProposalKind, string>>;
  /** In what a proposal is the best, a sentence. */
  readonly why: Readonly<Record<WhyCode, string>>;
  /** Which limit stands in the way, and what would help, in two sentences. */
  readonly obstacles: Readonly<Record<ObstacleCode, string>>;
  /** What is lacking, as in a list. */
  readonly missing: Readonly<Record<MissingInput, string>>;
  /** Pieces of the tally. */
  readonly pieces: Readonly<Record<TallyLine['kind'], string>>;
  /** Parts whose depths are compared with what was laid out. */
  readonly parts: Readonly<Record<ComparedPart, string>>;
  readonly edges: Readonly<Record<'top' | 'foot', string>>;
}
