/** Sums of Theis drawdowns, written here on their own so that they can check the series. */

/** W(u) = E1(u) by its series, good for u below 1 (Abramowitz and Stegun 5.1.11). */
export function wellFunction(u: number): number {
  let sum = -0.5772156649015329 - Math.log(u);
  let term = 1;
  for (let k = 1; k <= 20; k += 1) {
    term *= -u / k;
    sum -= term / k;
  }
  return sum;
}

export interface Aquifer {
  /** Square metres a day. */
  readonly transmissivity: number;
  readonly storage: number;
  /** Of the hole, metres. */
  readonly radiusM: number;
  /** Inside the casing, metres. */
  readonly casingRadiusM: number;
  /** Well loss, days squared to metres to the fifth. */
  readonly loss: number;
}

/** A change of rate: when, in minutes, and by how much, in cubic metres an hour. */
export interface Change {
  readonly minute: number;
  readonly by: number;
}

const minutesPerDay = 1440;
const hoursPerDay = 24;

/** Drawdown in metres at a minute: Theis (1935) summed over changes of rate, and C Q² (Jacob 1947). */
export function drawdown(aquifer: Aquifer, changes: readonly Change[], minute: number): number {
  const { transmissivity: t, storage, radiusM, loss } = aquifer;
  const past = changes.filter((change) => change.minute < minute);
  const aquiferLoss = past.reduce((sum, change) => {
    const days = (minute - change.minute) / minutesPerDay;
    const u = (radiusM ** 2 * storage) / (4 * t * days);
    return sum + ((change.by * hoursPerDay) / (4 * Math.PI * t)) * wellFunction(u);
  }, 0);
  const rate = past.reduce((sum, { by }) => sum + by * hoursPerDay, 0);
  return aquiferLoss + loss * rate ** 2;
}

/** Minutes after which water stored in the casing no longer tells: 25 rc²/T (Papadopulos and Cooper 1967). */
export function storageMinutes({ transmissivity, casingRadiusM }: Aquifer): number {
  return (25 * casingRadiusM ** 2 * minutesPerDay) / transmissivity;
}
