/**
 * Density of cement grout, t/m³ (kg/l), from its water to cement by mass and the density of
 * cement grains, kg/l: a kilogram of cement takes 1 / grain litres, its water as many litres as
 * kilograms.
 */
export function groutKgL(waterCement: number, cementGrainKgL: number): number {
  return (1 + waterCement) / (1 / cementGrainKgL + waterCement);
}
