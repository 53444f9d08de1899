import type { Finding } from '../../../base/finding.ts';
import type { RecordPath } from '../../../base/recordPath.ts';
import { dayOf } from '../../../record/moment.ts';
import type { WellRecord } from '../../../record/schema.ts';
import { judged, unjudged, type Rule } from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { isBefore } from './days.ts';
import type { WellEvent } from './words.ts';

interface Dated {
  readonly event: WellEvent;
  readonly path: RecordPath;
  readonly at: string;
}

function dated(event: WellEvent, path: RecordPath, at: string | undefined): Dated[] {
  return at === undefined ? [] : [{ event, path, at }];
}

/** Rest levels are read each morning while drilling goes on, and strikes are sampled. */
function sinceStart({ levels = [], strikes = [], quality = [] }: WellRecord): Dated[] {
  return [
    ...strikes.flatMap(({ at }, row) => dated('waterStruck', `strikes[${row}].at`, at)),
    ...levels.flatMap(({ at }, row) => dated('levelRead', `levels[${row}].at`, at)),
    ...quality.flatMap(({ takenAt }, row) =>
      dated('waterSampled', `quality[${row}].takenAt`, takenAt),
    ),
  ];
}

function sinceFinish(record: WellRecord): Dated[] {
  const { development = [], tests = [], disinfection = [], marks = [] } = record;
  return [
    ...development.flatMap(({ startedAt }, row) =>
      dated('developmentStarted', `development[${row}].startedAt`, startedAt),
    ),
    ...tests.flatMap(({ startedAt }, row) =>
      dated('testStarted', `tests[${row}].startedAt`, startedAt),
    ),
    ...disinfection.flatMap(({ at }, row) => dated('disinfected', `disinfection[${row}].at`, at)),
    ...dated('headworksBuilt', 'headworks.builtOn', record.headworks?.builtOn),
    ...dated('pumpSet', 'pump.installedOn', record.pump?.installedOn),
    ...marks.flatMap(({ on }, row) => dated('signed', `marks[${row}].on`, on)),
  ];
}

/** Where all of several later dates contradict an earlier one, that one is the likelier slip. */
function outOfOrder(earlier: Dated | undefined, laters: readonly Dated[]): Finding[] {
  if (!earlier) return [];
  const wrong = laters.filter(({ at }) => isBefore(at, earlier.at));
  const say = (path: RecordPath, later: Dated) =>
    broken('dates.order', 'error', path, {
      earlier: earlier.event,
      earlierOn: dayOf(earlier.at),
      later: later.event,
      laterOn: dayOf(later.at),
    });
  if (wrong.length > 1 && wrong.length === laters.length)
    return [
      say(
        earlier.path,
        wrong.reduce((a, b) => (isBefore(b.at, a.at) ? b : a)),
      ),
    ];
  return wrong.map((later) => say(later.path, later));
}

/**
 * Site agreed, drilling started, drilling finished, then all that needs a finished hole. Each
 * date is compared with the nearest known one that must lie before it, so that one slip is said
 * once.
 */
export const datesOrder: Rule = {
  id: 'dates.order',
  figures: [],
  judge({ record }) {
    const [agreed] = dated('siteAgreed', 'site.agreedOn', record.site?.agreedOn);
    const [started] = dated('drillingStarted', 'bore.startedOn', record.bore?.startedOn);
    const [finished] = dated('drillingFinished', 'bore.finishedOn', record.bore?.finishedOn);
    if (!started && !finished) return unjudged({ what: 'dates', path: 'bore.startedOn' });
    const begun = started ?? finished;
    return judged([
      ...outOfOrder(agreed, begun ? [begun] : []),
      ...outOfOrder(started, finished ? [finished] : []),
      ...outOfOrder(started, sinceStart(record)),
      ...outOfOrder(finished ?? started, sinceFinish(record)),
    ]);
  },
};
