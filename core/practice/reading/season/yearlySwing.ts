const monthsAYear = 12;

function daysIn(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

/** Where a day (YYYY-MM-DD…) stands in its year, in months from its start: 0 up to 12. */
export function monthsIntoYear(at: string): number | undefined {
  const [year, month, day] = at.slice(0, 10).split('-').map(Number);
  if (!year || !month || !day || month > monthsAYear) return undefined;
  return month - 1 + (day - 0.5) / daysIn(year, month);
}

function after(position: number, from: number): number {
  return (position - from + monthsAYear) % monthsAYear;
}

/**
 * How high the level stands over its lowest at a position in the year, as a share of the swing: 0
 * in the months of low; between two times of low a wave, `(1 − cos 2πd/L) / 2`, with 1 in their
 * middle. Two rainy seasons make two waves. None where every month or no month is of low.
 */
export function shareOverLowest(
  position: number,
  lowMonths: readonly number[],
): number | undefined {
  const isLow = (month: number) => lowMonths.includes((month % monthsAYear) + 1);
  const months = Array.from({ length: monthsAYear }, (_, month) => month);
  if (months.every(isLow) || !months.some(isLow)) return undefined;
  const month = Math.floor(position);
  if (isLow(month)) return 0;
  const back = months.findIndex((steps) => isLow(month - steps + monthsAYear));
  const ahead = months.findIndex((steps) => isLow(month + steps));
  const start = month - back + 1 + monthsAYear;
  const lasts = back + ahead - 1;
  return (1 - Math.cos((2 * Math.PI * after(position, start % monthsAYear)) / lasts)) / 2;
}
