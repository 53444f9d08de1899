import type { ChoiceWords } from '../catalogue.ts';
import { choices as english } from '../en/choices.ts';

export const choices: ChoiceWords = { ...english };
