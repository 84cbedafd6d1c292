import type { Knots, Measure, TrueDirection } from '../../units/index.ts';
import type { UnitWord } from '../../units/unit-table.ts';
import { windComponents } from '../../wind/index.ts';
import type { Wind } from '../kernel/air-and-wind.ts';
import type { Conditions } from '../request/conditions.ts';
import type { Situation } from '../request/situation.ts';
import type { WindLimit } from '../request/wind-limits.ts';

/** A limit that the wind is held against. */
export interface WindLimitFound {
  readonly speed: Measure<'kt' | 'mph' | 'mps'>;
  readonly status: 'limitation' | 'demonstrated' | 'personal';
  /** False for one that only informs, by the policy chosen. */
  readonly binds: boolean;
}

/** The reported wind on this runway as spreads, unrounded, each with the limits that stand against it. */
export interface WindOnRunway {
  /** Whichever side it comes from: from the least mean to the greatest in gusts that the report allows. */
  readonly across: {
    readonly least: Measure<'kt'>;
    readonly greatest: Measure<'kt'>;
    readonly from: 'left' | 'right' | 'either side' | 'neither side';
    readonly limits: readonly WindLimitFound[];
  };
  /** Headwind positive, tailwind negative. */
  readonly along: {
    readonly least: Measure<'kt'>;
    readonly greatest: Measure<'kt'>;
    /** By the policy on wind accountability. */
    readonly used: Measure<'kt'>;
    /** What enters the printed distances: the whole component where these contain the accountability already. */
    readonly inTables: Measure<'kt'>;
    readonly limits: readonly WindLimitFound[];
  };
}

/** The spreads of a report, and the limits against them. */
export function windOnRunway(situation: Situation, conditions: Conditions, wind: Wind): WindOnRunway {
  const { components, used_kt, inTables_kt, worstCrosswind_kt } = wind;
  const { leastHeadwind, leastHeadwindAtGust, crosswindFromLeft: left, crosswindFromRight: right } = components;
  const { leastAcross, greatestAlong } = bestOf(situation, conditions);
  const informs = (status: WindLimit['status']) =>
    status === 'demonstrated' && situation.policies.demonstratedCrosswind === 'information';
  return {
    across: {
      least: knots(leastAcross),
      greatest: knots(worstCrosswind_kt),
      from: sideOf(left, right),
      limits: situation.crosswindLimits.map((each) => limitFound(each, !informs(each.status))),
    },
    along: {
      least: knots(Math.min(leastHeadwind, leastHeadwindAtGust)),
      greatest: knots(greatestAlong),
      used: knots(used_kt),
      inTables: knots(inTables_kt),
      limits: situation.tailwindLimits.map((each) => limitFound(each, true)),
    },
  };
}

/** The mildest of a report: the least mean crosswind, and the greatest headwind in gusts. */
function bestOf({ runway }: Situation, { from_deg, speed_kt, gust_kt, range_deg }: Conditions) {
  if (from_deg === 'variable') return { leastAcross: 0, greatestAlong: gust_kt };
  const { direction_deg: along_deg } = runway;
  const directions = [from_deg, ...(range_deg === undefined ? [] : [range_deg.from, range_deg.to])];
  const at = (speed: number) =>
    directions.map((from) =>
      windComponents({
        from: from as TrueDirection,
        speed: speed as Knots,
        direction: along_deg as TrueDirection,
      }),
    );
  const isWithinRange = (deg: number) =>
    range_deg !== undefined && turn(range_deg.from, deg) <= turn(range_deg.from, range_deg.to);
  const isAlong = isWithinRange(along_deg) || isWithinRange(along_deg + 180);
  const heads = [...at(speed_kt), ...at(gust_kt)].map(({ headwind }) => headwind);
  return {
    leastAcross: isAlong ? 0 : Math.min(...at(speed_kt).map(({ crosswind }) => Math.abs(crosswind))),
    greatestAlong: isWithinRange(along_deg) ? gust_kt : Math.max(...heads),
  };
}

/** Degrees clockwise from one direction to another: 0 to 360. */
function turn(from: number, to: number): number {
  return (to - from + 720) % 360;
}

function sideOf(left: number, right: number): WindOnRunway['across']['from'] {
  if (Math.max(left, right) < 1e-9) return 'neither side';
  if (Math.abs(left - right) < 1e-9) return 'either side';
  return left > right ? 'left' : 'right';
}

/** Without the noise of a wind exactly along or abeam, and without a minus sign on nothing. */
function knots(value: number): Measure<'kt'> {
  return { value: Math.abs(value) < 1e-9 ? 0 : value, unit: 'kt' };
}

function limitFound({ value, unit, status }: WindLimit, binds: boolean): WindLimitFound {
  return { speed: { value, unit } satisfies Measure<UnitWord>, status, binds };
}
