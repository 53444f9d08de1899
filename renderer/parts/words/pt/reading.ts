import type { InterfaceWords } from '../catalogue.ts';

export const reading: InterfaceWords['reading'] = {
  number: (text) => `“${text}” não é um número. Escreva por exemplo 12,5 ou 12.5.`,
  twoMarks: (text) =>
    `“${text}” tem mais de uma vírgula. Escreva por exemplo 1250,5, sem sinal para os milhares.`,
  whole: (text) => `“${text}” não é um número inteiro. Escreva por exemplo 3.`,
  least: (text, least) => `${text} é pequeno de mais: aqui cabe no mínimo ${least}.`,
  most: (text, most) => `${text} é grande de mais: aqui cabe no máximo ${most}.`,
  choice: (text) => `“${text}” não está na lista. Escolha uma das palavras propostas.`,
  several: (text, words) => `“${text}” pode ser ${words}. Escreva a palavra inteira.`,
  day: (text) => `“${text}” não é um dia. Escreva por exemplo 2025-03-09, o ano primeiro.`,
  moment: (text) => `“${text}” não é uma data com hora. Escreva por exemplo 2025-03-09 14:05.`,
  list: (text) =>
    `“${text}” não é uma lista de números. Escreva por exemplo 0,5; 2,0, com ponto e vírgula entre eles.`,
  needed: 'Este campo não pode ficar vazio. Escreva um valor, ou elimine a linha.',
  at: (label, sentence) => `${label}: ${sentence}`,
};
