/** Namespaces of GroundWaterML 2.2 and of what it is made of (OGC 16-032r3, clause 6; github.com/denevers/GWML). */
export const namespaces = {
  gml: 'http://www.opengis.net/gml/3.2',
  gwml2w: 'http://www.opengis.net/gwml-well/2.2',
  gwml2wc: 'http://www.opengis.net/gwml-wellconstruction/2.2',
  sam: 'http://www.opengis.net/sampling/2.0',
  sams: 'http://www.opengis.net/samplingSpatial/2.0',
  swe: 'http://www.opengis.net/swe/2.0',
  om: 'http://www.opengis.net/om/2.0',
  gmd: 'http://www.isotc211.org/2005/gmd',
  gco: 'http://www.isotc211.org/2005/gco',
  xlink: 'http://www.w3.org/1999/xlink',
  xsi: 'http://www.w3.org/2001/XMLSchema-instance',
} as const;

/** What stands where the standard wants something that nobody knows. */
export const unknown = 'http://www.opengis.net/def/nil/OGC/0/unknown';

/** Heights above the geoid EGM96, EPSG 5773 (from memory). */
export const egm96 = 'http://www.opengis.net/def/crs/EPSG/0/5773';

/** WGS 84; as a URI its axes are latitude, longitude (from memory: EPSG, OGC axis order policy). */
export const wgs84 = 'http://www.opengis.net/def/crs/EPSG/0/4326';
export const wgs84WithHeight = 'http://www.opengis.net/def/crs/EPSG/0/4979';

export const lithologyScheme =
  'http://resource.geosciml.org/classifierscheme/cgi/2016.01/simplelithology';
export const lithologyConcepts = 'http://resource.geosciml.org/classifier/cgi/lithology/';
export const drillingConcepts =
  'http://resource.geosciml.org/classifier/cgi/boreholedrillingmethod/';
