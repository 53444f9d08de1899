import type { RecordPath } from '../../base/recordPath.ts';

/** A field of a record that is one value, with the name that it has in a flat list. */
export interface FlatField {
  readonly name: string;
  readonly path: RecordPath;
}

const field = (name: string, path: RecordPath): FlatField => ({ name, path });

/**
 * Single values of a record, named with their units as people who draw maps of them expect. Names
 * are never changed once they are out, since files are read back by them.
 */
export const flatFields: readonly FlatField[] = [
  field('number', 'identity.number'),
  field('name', 'identity.name'),
  field('programme', 'identity.programme'),
  field('contract', 'identity.contract'),
  field('permit', 'identity.permit'),
  field('client', 'identity.client'),
  field('contractor', 'identity.contractor'),
  field('driller', 'identity.driller'),
  field('supervisor', 'identity.supervisor'),
  field('purpose', 'identity.purpose'),
  field('state', 'identity.state'),
  field('country', 'site.country'),
  field('region', 'site.region'),
  field('district', 'site.district'),
  field('commune', 'site.commune'),
  field('village', 'site.village'),
  field('spot', 'site.spot'),
  field('position_method', 'site.positionMethod'),
  field('position_accuracy_m', 'site.positionAccuracy'),
  field('elevation_m', 'site.elevation'),
  field('elevation_datum', 'site.elevationDatum'),
  field('agreed_on', 'site.agreedOn'),
  field('households', 'site.households'),
  field('users', 'site.users'),
  field('committee', 'site.committee.name'),
  field('caretaker', 'site.committee.caretaker'),
  field('telephone', 'site.committee.telephone'),
  field('method', 'bore.method'),
  field('rig', 'bore.rig'),
  field('started_on', 'bore.startedOn'),
  field('finished_on', 'bore.finishedOn'),
  field('depth_drilled_m', 'bore.depthReached'),
  field('depth_found_m', 'bore.depthFound'),
  field('casing_above_ground_m', 'headworks.casingAboveGround'),
  field('headworks_built_on', 'headworks.builtOn'),
  field('pump_kind', 'pump.kind'),
  field('pump_model', 'pump.model'),
  field('pump_serial', 'pump.serial'),
  field('pump_intake_m', 'pump.intake'),
  field('pump_installed_on', 'pump.installedOn'),
  field('pump_rate_m3h', 'pump.rate'),
  field('notes', 'notes'),
];
