/** Metres below ground level, positive down; negative above ground. */
export type DepthM = number;
/** A length or height in metres. */
export type Metres = number;
/** A small size (diameter, wall, slot, grain) in millimetres. */
export type Millimetres = number;
/** A length on the paper in millimetres. */
export type PaperMm = number;
export type Litres = number;

export const mmPerM = 1000;
const litresPerM3 = 1000;

/** Volume of a cylinder of a diameter (mm) over a length (m), in litres. */
export function cylinderLitres(diameterMm: Millimetres, lengthM: Metres): Litres {
  const diameterM = diameterMm / mmPerM;
  return (Math.PI / 4) * diameterM * diameterM * lengthM * litresPerM3;
}

/** Volume between two diameters (mm) over a length (m), in litres. */
export function ringLitres(outerMm: Millimetres, innerMm: Millimetres, lengthM: Metres): Litres {
  return cylinderLitres(outerMm, lengthM) - cylinderLitres(innerMm, lengthM);
}
