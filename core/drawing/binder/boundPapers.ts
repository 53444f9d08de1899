/** Papers that a binder may hold of each well, in this order. */
export const boundPapers = ['asBuilt', 'layingOut', 'committee'] as const;
export type BoundPaper = (typeof boundPapers)[number];

/** What may stand in a binder of each well: its papers, and its attachments behind them. */
export type BoundSheet = BoundPaper | 'attachments';
