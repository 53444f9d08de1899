import type { InterfaceWords } from '../../parts/words/catalogue.ts';

/** Words of plots in one language, handed to the plain functions that make them. */
export type PlotWords = InterfaceWords['water']['plots'];
