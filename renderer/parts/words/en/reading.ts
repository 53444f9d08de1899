export const reading = {
  number: (text: string) => `“${text}” is not a number. Write it like 12.5 or 12,5.`,
  twoMarks: (text: string) =>
    `“${text}” has more than one decimal mark. Write it like 1250.5, without a mark for thousands.`,
  whole: (text: string) => `“${text}” is not a whole number. Write it like 3.`,
  least: (text: string, least: number) =>
    `${text} is too small: ${least} is the least that fits here.`,
  most: (text: string, most: number) => `${text} is too large: ${most} is the most that fits here.`,
  choice: (text: string) => `“${text}” is not in the list. Choose one of the words offered.`,
  several: (text: string, words: string) => `“${text}” may be ${words}. Write it out.`,
  day: (text: string) => `“${text}” is not a day. Write it like 2025-03-09, year first.`,
  moment: (text: string) => `“${text}” is not a date with a time. Write it like 2025-03-09 14:05.`,
  list: (text: string) =>
    `“${text}” is not a list of numbers. Write them like 0.5; 2.0, with semicolons between.`,
  needed: 'This cannot be left empty. Write a value, or delete the row.',
  at: (label: string, sentence: string) => `${label}: ${sentence}`,
};
