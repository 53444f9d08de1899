import { resolveWell } from '../model/resolveWell.ts';
import type { WellModel } from '../model/wellModel.ts';
import { judgeWell } from '../practice/judgeWell.ts';
import type { Practice } from '../practice/practice.ts';
import { designRateM3h, lowestRestM, pumpingLevelM } from '../practice/reading/water.ts';
import type { ProposalKind } from '../record/layingOut.ts';
import type { WellRecord } from '../record/schema.ts';
import { layFills } from './annulusFills.ts';
import { cmOf, metresOf } from './centimetres.ts';
import { chooseFewestCuts, chooseFor } from './choose.ts';
import { readGround } from './ground.ts';
import { missingInputsOf } from './inputs.ts';
import { graveLimitsOf, limitsOf } from './limits.ts';
import { obstaclesOf } from './obstacles.ts';
import type { Problem } from './problem.ts';
import type { LaidOut, Proposal, SaidValues } from './proposal.ts';
import { fitFound, search, type Found } from './search.ts';
import { familiesOf } from './stock.ts';
import { stringOf, tallyOf } from './tally.ts';

/** What proposals are made from. */
interface Site {
  readonly record: WellRecord;
  readonly model: WellModel;
  readonly practice: Practice;
}

/** The rate, where it tells how much open area is needed: the open area of every screen is known. */
function rateToLetIn(record: WellRecord): number | undefined {
  const screens = (record.layingOut?.pipes ?? []).filter(({ kind }) => kind === 'screen');
  return screens.every(({ openArea, outside }) => openArea && outside)
    ? designRateM3h(record)
    : undefined;
}

/** The problem by the limits that the practice wants; the depth of the hole must be known. */
function problemOf({ record, model, practice }: Site): Problem {
  const { bore } = model;
  const { layingOut = {} } = record;
  const limits = limitsOf(practice, layingOut, rateToLetIn(record));
  const openM = Math.min(bore.foundM ?? Infinity, bore.depthM ?? 0);
  const holeCm = openM > 0 ? cmOf(openM) : 0;
  const gapMm = practice.figures.annulusGapGraveMm.value;
  const dryM = lowestRestM(record, model) ?? 0;
  return {
    ground: readGround(model, holeCm, limits.aquitardCm),
    families: familiesOf(layingOut.pipes ?? [], bore, gapMm, holeCm),
    limits,
    holeCm,
    dryCm: cmOf(dryM),
    pumpingCm: cmOf(pumpingLevelM(record, model) ?? dryM),
  };
}

function whyValues({ topCm, footCm }: Found, cuts: number, problem: Problem): SaidValues {
  const goodCm = problem.ground.goodCm(topCm, footCm);
  return {
    topM: metresOf(topCm),
    footM: metresOf(footCm),
    goodM: metresOf(goodCm),
    underDryM: metresOf(topCm - problem.dryCm),
    cuts,
  };
}

function propose(
  kind: ProposalKind,
  found: Found,
  problem: Problem,
  full: Problem,
  { record, model, practice }: Site,
): Proposal {
  const { layingOut = {} } = record;
  const { topCm, footCm, screenCuts, plainCuts } = found;
  const tally = tallyOf(found, fitFound(found, problem));
  const strings = [stringOf(tally, layingOut.pipes ?? [])];
  const aquifer = problem.ground.aquifers.find((one) => one.footCm >= footCm)!;
  const drilledCm = cmOf(model.bore.depthM ?? 0);
  const slotted = { aquifer, topCm, holeCm: problem.holeCm, drilledCm };
  const annulus = layFills(slotted, full.limits, problem.limits, layingOut, practice);
  const filled = { ...record, strings, annulus };
  const cuts = screenCuts + plainCuts;
  return {
    kind,
    strings,
    annulus,
    tally,
    cuts,
    screenM: metresOf(footCm - topCm),
    findings: judgeWell(filled, resolveWell(filled), practice).findings,
    why: { code: kind, values: whyValues(found, cuts, problem) },
  };
}

function isSame(one: Found, other: Found): boolean {
  const samePlace = one.topCm === other.topCm && one.footCm === other.footCm;
  const sameCuts = one.screenCuts === other.screenCuts && one.plainCuts === other.plainCuts;
  return samePlace && sameCuts && one.family === other.family;
}

/** The best of each kind; one that is the best in several is proposed once. */
function choose(found: readonly Found[]): [ProposalKind, Found][] {
  const chosen: [ProposalKind, Found | undefined][] = [
    ['safest', chooseFor('safest', found)],
    ['mostProductive', chooseFor('mostProductive', found)],
    ['fewestCuts', chooseFewestCuts(found)],
  ];
  const told = chosen.flatMap(([kind, one]): [ProposalKind, Found][] => (one ? [[kind, one]] : []));
  return told.filter(([, one], at) => !told.slice(0, at).some(([, before]) => isSame(one, before)));
}

function proposalsOf(problem: Problem, full: Problem, site: Site): Proposal[] {
  const chosen = choose(search(problem));
  const proposals = chosen.map(([kind, found]) => propose(kind, found, problem, full, site));
  const [only] = proposals;
  if (!only || proposals.length > 1) return proposals;
  return [{ ...only, why: { ...only.why, code: 'onlyOne' } }];
}

/**
 * Lays out completions from the log, the water level, the hole, the pipes on site and the
 * practice: up to three, each the best of its kind. Where none meets the practice, the limits
 * that stand in the way are said, with completions that fall short of no limit gravely, if there
 * are any. Never throws for field data; docs/laying-out.md says how it is reckoned.
 */
export function layOut(record: WellRecord, model: WellModel, practice: Practice): LaidOut {
  const missing = missingInputsOf(record, model);
  if (missing.some(({ stops }) => stops)) return { proposals: [], missing, obstacles: [] };
  const site = { record, model, practice };
  const full = problemOf(site);
  const proposals = proposalsOf(full, full, site);
  if (proposals.length > 0) return { proposals, missing, obstacles: [] };
  const least = { ...full, limits: graveLimitsOf(full.limits, practice) };
  const short = proposalsOf(least, full, site);
  const obstacles = obstaclesOf(short.length > 0 ? full : least, practice);
  return { proposals: short, missing, obstacles };
}
