import { entry, figure, type Entry, type Told } from '../entry.ts';

/** Who the well is and whose. */
export function identityEntries({ record: { identity }, sheet, words }: Told): Entry[] {
  if (!identity) return [];
  const { title, roles, states } = sheet;
  const { state } = identity;
  const named = [
    ['number', title.number, identity.number],
    ['name', words.what.name, identity.name],
    ['state', title.status, state && states[state]],
    ['client', title.client, identity.client],
    ['programme', title.programme, identity.programme],
    ['contract', title.contract, identity.contract],
    ['contractor', title.contractor, identity.contractor],
    ['driller', words.what.driller, identity.driller],
    ['supervisor', roles.supervisor, identity.supervisor],
    ['practice', words.what.practice, identity.practice],
    ['guidelines', words.what.guidelines, identity.guidelines],
  ] as const;
  return named.flatMap(([key, what, says]) => entry('identity', key, what, [says]));
}

/** Where the well is and who uses it; what stands round it, piece by piece. */
export function siteEntries(told: Told): Entry[] {
  const { record, sheet, words } = told;
  const { site } = record;
  if (!site) return [];
  const { facts, title } = sheet;
  const { latitude, longitude, elevation, users, households, surroundings = [] } = site;
  return [
    ...entry('site', 'place', title.place, [site.village, site.spot]),
    ...entry('site', 'district', title.district, [
      site.commune,
      site.district,
      site.region,
      site.country,
    ]),
    ...entry('site', 'position', facts.position, [
      figure(told, latitude, '°', 6),
      figure(told, longitude, '°', 6),
    ]),
    ...entry('site', 'elevation', facts.elevation, [figure(told, elevation, 'm', 1)]),
    ...entry('site', 'users', facts.users, [
      figure(told, users, '', 0),
      figure(told, households, facts.households, 0),
    ]),
    ...surroundings.flatMap(({ kind, distance, direction }, at) =>
      entry('site', `surrounding ${kind} ${at}`, `${words.what.surrounding} ${at + 1}`, [
        kind,
        figure(told, distance, 'm', 1),
        figure(told, direction, '°', 0),
      ]),
    ),
  ];
}
