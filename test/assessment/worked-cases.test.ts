import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  assessLanding,
  assessTakeoff,
  type LandingRequest,
  type TakeoffRequest,
  weatherFromMetar,
} from '../../src/assessment/index.ts';
import { readMetar } from '../../src/weather-report/index.ts';
import {
  caseOf,
  down,
  printedFactor,
  rebuildLanding,
  rebuildTakeoff,
  softGroundEstimate,
  tenth,
  up,
} from './rebuild.ts';
import { type Changes, codes, criterion, landing, takeoff, totals, turning } from './scenario.ts';

const page = readFileSync(new URL('../../docs/guides/worked-cases.md', import.meta.url), 'utf8').replaceAll(
  /\s+/g,
  ' ',
);

/** The page says this, wherever its lines break. */
const says = (...sentences: string[]) => {
  for (const sentence of sentences) expect(page).toContain(sentence);
};

/** Thousands apart, as the pages print them. */
const thousands = (figure: number) => String(figure).replace(/\B(?=(\d{3})+$)/, ' ');

const rounded = (stairs: Record<string, number>) =>
  Object.fromEntries(Object.entries(stairs).map(([step, metres]) => [step, tenth(metres)]));

/** Every criterion in its order: id, status, verdict, and value, limit and margin where it is decided. */
const list = (assessment: ReturnType<typeof takeoff> | ReturnType<typeof landing>) =>
  assessment.criteria.map((each) =>
    each.verdict === 'undetermined'
      ? [each.id, each.limitStatus, each.verdict, each.atLeast?.value]
      : [each.id, each.limitStatus, each.verdict, each.value.value, each.limit.value, each.margin.value],
  );

const atMost = (id: string, status: string, value: number, limit: number) => [
  id,
  status,
  value <= limit ? 'within' : 'outside',
  value,
  limit,
  limit - value,
];

const parametersOf = (sentences: readonly { code: string; parameters: object }[], code: string) =>
  sentences.find((each) => each.code === code)?.parameters;

const air = (assessment: ReturnType<typeof takeoff> | ReturnType<typeof landing>) => [
  (parametersOf(assessment.headline, 'pressure-altitude') as { pressureAltitude_ft: number }).pressureAltitude_ft,
  (parametersOf(assessment.dataNotes, 'density-altitude') as { densityAltitude_ft: number }).densityAltitude_ft,
];

const airOf = ({
  pressureAltitude_ft,
  densityAltitude_ft,
}: {
  pressureAltitude_ft: number;
  densityAltitude_ft: number;
}) => [expect.closeTo(pressureAltitude_ft, 6), up(densityAltitude_ft)];

describe('soft grass in spring', () => {
  const name = 'case-soft-spring-takeoff';
  const request = caseOf<TakeoffRequest>('soft-spring-takeoff');
  const leaflet = (id: string) => printedFactor('uk-light-aeroplane-leaflet', 'takeoff', `uk-leaflet-takeoff-${id}`);
  const rebuilt = (surface: number) =>
    rebuildTakeoff(request, { surface, safety: 1.33, slope: { percent: 7, of: 'ground roll' }, lineUp_m: 10 });
  const assessment = takeoff(name);
  const by = rebuilt(leaflet('grass-wet') * leaflet('soft'));
  const estimate = softGroundEstimate(request, by);
  const confirmation: Changes = {
    policies: {
      confirmations: [
        { factorId: 'uk-leaflet-takeoff-soft', edition: 'Safety Sense Leaflet 07, 7c', date: '2026-04-02' },
      ],
    },
  };

  it('is undetermined, with every bound as rebuilt', () => {
    expect(assessment.verdict).toBe('undetermined');
    expect(totals(assessment)).toEqual(rounded(by.stairs));
    expect(assessment.stairs?.available.value).toBe(by.available_m);
    expect(by.used).toBeGreaterThan(0);
    expect(list(assessment)).toEqual([
      atMost('mass', 'limitation', 700, 750),
      ['takeoff-run', 'distance available', 'undetermined', up(by.roll * 1.33)],
      ['takeoff-distance', 'distance available', 'undetermined', up(by.stairs['safety factor'])],
      ['obstacle', 'clearance asked', 'undetermined', undefined],
      atMost('crosswind', 'demonstrated', up(by.crosswind), 14),
      atMost('tailwind', 'limitation', 0, 6),
    ]);
    expect(air(assessment)).toEqual(airOf(by));
  });

  it('passes the hedge by what the rebuilt path passes it by', () => {
    const [over] = by.over;
    const shown = criterion(assessment, 'obstacle').reasons.map(({ parameters }) => parameters);
    expect(shown).toContainEqual(
      expect.objectContaining({ factored_ft: over?.factored_ft, unfactored_ft: over?.unfactored_ft }),
    );
    expect(assessment.climbOut?.achieved?.value).toBeCloseTo(by.achieved_percent, 9);
    expect(assessment.climbOut?.obstacles[0]?.required?.value).toBeCloseTo(over?.required_percent as number, 9);
  });

  it('turns where the rebuilt distance fills the distance available', () => {
    expect(turning(assessment)['surface factor']).toBe(by.breakEvenSurface);
    expect(up(rebuilt(by.breakEvenSurface).stairs['safety factor'])).toBeLessThanOrEqual(810);
    expect(up(rebuilt(by.breakEvenSurface + 0.001).stairs['safety factor'])).toBeGreaterThan(810);
  });

  it('shows the estimate beside the break-even: less than it with the least friction, no lift-off with the greatest', () => {
    expect(estimate.least).toBeLessThan(by.breakEvenSurface);
    expect(estimate.everLiftsOff).toBe(false);
    const [shown] = assessment.estimates;
    expect(shown?.text).toContain(`at least ${Math.floor(estimate.least * 100) / 100};`);
    expect(shown?.text).toContain('may not reach its lift-off speed');
  });

  it('stays undetermined when the recalled factor is confirmed, and whatever the mass', () => {
    const confirmed = takeoff(name, confirmation);
    expect(codes(assessment.reasons)).toContain('recalled-factor');
    expect(codes(confirmed.reasons)).not.toContain('recalled-factor');
    expect(confirmed.verdict).toBe('undetermined');
    expect(takeoff(name, { 'mass.value': 500 }).verdict).toBe('undetermined');
  });

  it('is outside by the bound alone where a metre less is left after lining up', () => {
    const lineUp = 820 - up(by.stairs['safety factor']);
    const distance = (metres: number, changes: Changes) =>
      criterion(takeoff(name, { ...changes, 'lineUpLoss.value': metres }), 'takeoff-distance').verdict;
    expect([distance(lineUp, confirmation), distance(lineUp + 1, confirmation)]).toEqual(['undetermined', 'outside']);
    // A recalled factor that nobody has confirmed proves nothing either way.
    expect(distance(lineUp + 1, {})).toBe('undetermined');
  });

  it('is within once the ground is firm', () => {
    const firm = takeoff(name, { 'runway.surface.ground': 'firm' });
    const { stairs, roll, over } = rebuilt(leaflet('grass-wet'));
    expect(firm.verdict).toBe('within');
    expect(totals(firm)).toEqual(rounded(stairs));
    const [achieved, asked] = [down(by.achieved_percent, 10), up(over[0]?.required_percent as number, 10)];
    expect(list(firm).slice(1, 4)).toEqual([
      atMost('takeoff-run', 'distance available', up(roll * 1.33), 810),
      atMost('takeoff-distance', 'distance available', up(stairs['safety factor']), 810),
      ['obstacle', 'clearance asked', 'within', achieved, asked, Number((achieved - asked).toFixed(1))],
    ]);
    says(`**${up(stairs['safety factor'])} m** of 810 m`);
  });

  it('stands on the page as rebuilt', () => {
    says(
      `pressure altitude **${up(by.pressureAltitude_ft)} ft**`,
      `uphill ${by.slope_percent.toFixed(1)} %`,
      `headwind used **${by.used.toFixed(1)} kt**`,
      `crosswind **${up(by.crosswind)} kt** of 14 kt`,
      ...Object.values(by.stairs).map((metres) => `| ${tenth(metres).toFixed(1)} m |`),
      `at least **${up(by.stairs['safety factor'])} m** of 810 m`,
      `more than **${by.breakEvenSurface}**`,
      `at least **${Math.floor(estimate.least * 100) / 100}**`,
    );
  });
});

describe('a short runway between trees in summer', () => {
  const outRequest = caseOf<TakeoffRequest>('summer-trees-takeoff');
  const corrections = { surface: 1, safety: 1.25, slope: { percent: 5, of: 'distance' } } as const;
  const out = takeoff('case-summer-trees-takeoff');
  const into = landing('case-summer-trees-landing');
  const departure = rebuildTakeoff(outRequest, corrections);
  const arrival = rebuildLanding(caseOf<LandingRequest>('summer-trees-landing'), { safety: 1 / 0.7, clearance_ft: 30 });
  const at = (mass_kg: number, temperature_degC: number) =>
    rebuildTakeoff(
      {
        ...outRequest,
        mass: { value: mass_kg, unit: 'kg' },
        weather: { ...outRequest.weather, temperature: { value: temperature_degC, unit: 'degC' } },
      },
      corrections,
    );
  /** Every figure that the mass or the temperature moves, against its limit. */
  const isWithin = ({ stairs, achieved_percent, over }: ReturnType<typeof at>) =>
    up(stairs['safety factor']) <= 700 &&
    over.every((each) => down(achieved_percent, 10) >= up(each.required_percent, 10));

  it('lets the aeroplane in: every figure of the landing as rebuilt', () => {
    expect(into.verdict).toBe('within');
    expect(totals(into)).toEqual(rounded(arrival.stairs));
    expect(list(into)).toEqual([
      atMost('mass', 'limitation', 930, 1050),
      atMost('landing-distance', 'distance available', up(arrival.stairs['safety factor']), down(arrival.available_m)),
      atMost('crosswind', 'demonstrated', up(arrival.crosswind), 19),
      atMost('tailwind', 'limitation', 0, 8),
    ]);
    expect(parametersOf(into.reasons, 'approach-loss')).toMatchObject({
      lost_m: up(arrival.lost_m),
      obstacle: 'orchard',
    });
    expect(into.speeds[0]).toMatchObject({ name: 'approach', speed: { value: arrival.approach_kias } });
    expect(arrival.approach_kias).toBe(57);
    expect(into.marks).toContainEqual(
      expect.objectContaining({ id: 'latest-touchdown-point', at: { value: arrival.latestTouchdown_m, unit: 'm' } }),
    );
    expect(air(into)).toEqual(airOf(arrival));
  });

  it('lets it in with gusts as long as the rebuilt distance, their addition paid for, still fits', () => {
    const request = caseOf<LandingRequest>('summer-trees-landing');
    const required = (gust_kt: number) => {
      const wind = { ...request.weather.wind, gust: { value: gust_kt, unit: 'kt' as const } };
      const { stairs } = rebuildLanding(
        { ...request, weather: { ...request.weather, wind } },
        { safety: 1 / 0.7, clearance_ft: 30 },
      );
      return up(stairs['safety factor']);
    };
    let gust = 5;
    while (required(gust + 1) <= down(arrival.available_m)) gust += 1;
    const verdict = (value: number) =>
      landing('case-summer-trees-landing', { 'weather.wind.gust': { value, unit: 'kt' } }).verdict;
    expect([verdict(gust), verdict(gust + 1)]).toEqual(['within', 'outside']);
    says(`gusts of up to **${gust} kt**`);
  });

  it('does not let it out: outside for the trees alone, every figure of the take-off as rebuilt', () => {
    const [trees] = departure.over;
    const [achieved, required] = [down(departure.achieved_percent, 10), up(trees?.required_percent as number, 10)];
    expect(out.verdict).toBe('outside');
    const { surface: _, ...stairs } = departure.stairs;
    expect(totals(out)).toEqual(rounded(stairs));
    expect(list(out)).toEqual([
      atMost('mass', 'limitation', 930, 1050),
      atMost('takeoff-run', 'distance available', up(departure.roll * 1.25), 700),
      atMost('takeoff-distance', 'distance available', up(departure.stairs['safety factor']), 700),
      ['obstacle', 'clearance asked', 'outside', achieved, required, Number((achieved - required).toFixed(1))],
      atMost('crosswind', 'demonstrated', up(departure.crosswind), 19),
      atMost('tailwind', 'limitation', 0, 8),
    ]);
    expect(criterion(out, 'obstacle').reasons[0]?.parameters).toMatchObject({
      factored_ft: trees?.factored_ft,
      unfactored_ft: trees?.unfactored_ft,
    });
    expect(air(out)).toEqual(airOf(departure));
  });

  it('lets it out lighter or cooler, up to where the rebuilt climb-out still clears', () => {
    let mass = 930;
    while (!isWithin(at(mass, 33))) mass -= 1;
    let temperature = 33;
    while (!isWithin(at(930, temperature))) temperature -= 1;
    const verdict = (changes: Changes) => takeoff('case-summer-trees-takeoff', changes).verdict;
    expect([verdict({ 'mass.value': mass }), verdict({ 'mass.value': mass + 1 })]).toEqual(['within', 'outside']);
    expect([
      verdict({ 'weather.temperature.value': temperature }),
      verdict({ 'weather.temperature.value': temperature + 1 }),
    ]).toEqual(['within', 'outside']);
    says(`up to **${mass} kg**`, `up to **${temperature} °C**`);
  });

  it('stands on the page as rebuilt', () => {
    const [trees] = departure.over;
    says(
      `ressure altitude **${thousands(up(departure.pressureAltitude_ft))} ft**`,
      `density altitude **${thousands(up(departure.densityAltitude_ft))} ft**`,
      `| ${tenth(departure.stairs.manual).toFixed(1)} m | ${tenth(arrival.stairs.manual).toFixed(1)} m |`,
      `| ${tenth(departure.stairs.wind).toFixed(1)} m | ${tenth(arrival.stairs.wind).toFixed(1)} m |`,
      `| ${tenth(departure.stairs.slope).toFixed(1)} m | no credit |`,
      `| ${tenth(departure.stairs['safety factor']).toFixed(1)} m | ${tenth(arrival.stairs['safety factor']).toFixed(1)} m |`,
      `**${up(arrival.stairs['safety factor'])} m** of ${down(arrival.available_m)} m`,
      `uphill ${departure.slope_percent.toFixed(1)} %`,
      `Headwind used **${departure.used.toFixed(1)} kt**, crosswind **${up(departure.crosswind)} kt** of 19 kt`,
      `takes ${up(arrival.lost_m)} m off`,
      `**${up(departure.stairs['safety factor'])} m** of 700 m`,
      `**${down(departure.achieved_percent, 10)} %** against ${up(trees?.required_percent as number, 10)} %`,
      `${trees?.factored_ft} ft above the spruces`,
      `${trees?.unfactored_ft} ft`,
    );
  });
});

describe('gusts across a paved runway', () => {
  const corrections = { surface: 1, safety: 1.25, slope: { percent: 5, of: 'distance' } } as const;
  const out = takeoff('case-gusty-crosswind-takeoff');
  const into = landing('case-gusty-crosswind-landing');
  const departure = rebuildTakeoff(caseOf<TakeoffRequest>('gusty-crosswind-takeoff'), corrections);
  const intoRequest = caseOf<LandingRequest>('gusty-crosswind-landing');
  const arrival = rebuildLanding(intoRequest, { safety: 1 / 0.7, clearance_ft: 50 });
  const crosswinds = (crosswind: number) => [
    atMost('crosswind', 'demonstrated', up(crosswind), 19),
    atMost('crosswind', 'personal', up(crosswind), 18),
    atMost('tailwind', 'limitation', 0, 8),
  ];

  it('takes off within every distance and outside both crosswind limits, as rebuilt', () => {
    expect(out.verdict).toBe('outside');
    const { surface: _, ...stairs } = departure.stairs;
    expect(totals(out)).toEqual(rounded(stairs));
    expect(list(out)).toEqual([
      atMost('mass', 'limitation', 980, 1050),
      atMost('takeoff-run', 'distance available', up(departure.roll * 1.25), 1080),
      atMost('takeoff-distance', 'distance available', up(departure.stairs['safety factor']), 1080),
      ...crosswinds(departure.crosswind),
    ]);
    expect(up(departure.crosswind)).toBeGreaterThan(19);
    expect(air(out)).toEqual(airOf(departure));
  });

  it('lands with half the gust increment, which the distance pays for, as rebuilt', () => {
    expect(into.verdict).toBe('outside');
    expect(totals(into)).toEqual(rounded(arrival.stairs));
    expect(list(into)).toEqual([
      atMost('mass', 'limitation', 980, 1050),
      atMost('landing-distance', 'distance available', up(arrival.stairs['safety factor']), 1080),
      ...crosswinds(arrival.crosswind),
    ]);
    expect(into.speeds[0]).toMatchObject({
      name: 'approach',
      speed: { value: arrival.approach_kias, unit: 'kias' },
      calibrated: { value: expect.closeTo(arrival.approach_kcas, 6), unit: 'kcas' },
    });
    expect(into.marks).toContainEqual(
      expect.objectContaining({ id: 'latest-touchdown-point', at: { value: arrival.latestTouchdown_m, unit: 'm' } }),
    );
  });

  it('uses half of the least headwind over the range, at its end farthest from the runway', () => {
    const least = 14 * Math.cos(((330 - 268) * Math.PI) / 180);
    expect(departure.used).toBeCloseTo(least / 2, 9);
    expect(departure.crosswind).toBeCloseTo(24 * Math.sin(((330 - 268) * Math.PI) / 180), 9);
  });

  it('is within once the wind no longer veers beyond its mean direction', () => {
    const narrower = { 'weather.wind.range.to.value': 310 };
    const { wind } = intoRequest.weather;
    const range = { from: { value: 280, unit: 'degTrue' as const }, to: { value: 310, unit: 'degTrue' as const } };
    const again = rebuildLanding(
      { ...intoRequest, weather: { ...intoRequest.weather, wind: { ...wind, range } } },
      { safety: 1 / 0.7, clearance_ft: 50 },
    );
    const calmer = landing('case-gusty-crosswind-landing', narrower);
    expect(calmer.verdict).toBe('within');
    expect(list(calmer).slice(2)).toEqual(crosswinds(again.crosswind));
    expect(totals(calmer)).toEqual(rounded(again.stairs));
    expect(takeoff('case-gusty-crosswind-takeoff', narrower).verdict).toBe('within');
    says(`**${up(again.crosswind)} kt**: within both`);
  });

  it('takes the weather of the report on the page', () => {
    const report = /readMetar\('(METAR [^']+)'\)/.exec(page)?.[1];
    const read = readMetar(report as string);
    expect(read.ok && weatherFromMetar(read.value)).toEqual({ ok: true, value: intoRequest.weather });
    expect(caseOf<TakeoffRequest>('gusty-crosswind-takeoff').weather).toEqual(intoRequest.weather);
  });

  it('then turns with the gusts, where their crosswind passes the personal limit', () => {
    const across = (gust: number) => up(gust * Math.sin(((310 - 268) * Math.PI) / 180));
    const verdict = (gust: number) =>
      landing('case-gusty-crosswind-landing', {
        'weather.wind.range.to.value': 310,
        'weather.wind.gust.value': gust,
      }).verdict;
    let gust = 24;
    while (across(gust + 1) <= 18) gust += 1;
    expect([verdict(gust), verdict(gust + 1)]).toEqual(['within', 'outside']);
    says(`${gust} kt still are within, ${gust + 1} kt are not`);
  });

  it('is no better with less mass', () => {
    expect(takeoff('case-gusty-crosswind-takeoff', { 'mass.value': 850 }).verdict).toBe('outside');
    expect(landing('case-gusty-crosswind-landing', { 'mass.value': 850 }).verdict).toBe('outside');
  });

  it('stands on the page as rebuilt', () => {
    const steep = arrival.stairs as Record<string, number>;
    says(
      `ressure altitude **${thousands(up(departure.pressureAltitude_ft))} ft**`,
      `headwind used **${departure.used.toFixed(1)} kt**`,
      `crosswind **${up(departure.crosswind)} kt**`,
      `of the ${down(14 * Math.cos((42 * Math.PI) / 180))} kt that the mean direction shows`,
      `where the mean direction shows ${up(24 * Math.sin((42 * Math.PI) / 180))} kt`,
      `uphill ${departure.slope_percent.toFixed(1)} %`,
      `**${arrival.approach_kias} KIAS**`,
      `${arrival.approach_kcas.toFixed(1)} KCAS`,
      `| ${tenth(departure.stairs.manual).toFixed(1)} m | ${tenth(arrival.stairs.manual).toFixed(1)} m |`,
      `| ${tenth(departure.stairs.wind).toFixed(1)} m | ${tenth(arrival.stairs.wind).toFixed(1)} m |`,
      `| ${tenth(departure.stairs.slope).toFixed(1)} m | no credit |`,
      `| ${tenth(steep['speed addition'] as number).toFixed(1)} m |`,
      `| ${tenth(departure.stairs['safety factor']).toFixed(1)} m | ${tenth(arrival.stairs['safety factor']).toFixed(1)} m |`,
      `**${up(departure.stairs['safety factor'])} m** of 1 080 m`,
      `**${up(arrival.stairs['safety factor'])} m** of 1 080 m`,
    );
  });
});

describe('a worked case written and read again', () => {
  const written = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

  it.each(['soft-spring-takeoff', 'summer-trees-takeoff', 'gusty-crosswind-takeoff'])(
    'assesses the same: %s',
    (name) => {
      const first = assessTakeoff(caseOf<TakeoffRequest>(name));
      if (!first.ok) throw new Error(JSON.stringify(first.faults));
      expect(assessTakeoff(written(first.value.request))).toEqual(first);
      expect(written(first)).toEqual(first);
    },
  );

  it.each(['summer-trees-landing', 'gusty-crosswind-landing'])('assesses the same: %s', (name) => {
    const first = assessLanding(caseOf<LandingRequest>(name));
    if (!first.ok) throw new Error(JSON.stringify(first.faults));
    expect(assessLanding(written(first.value.request))).toEqual(first);
    expect(written(first)).toEqual(first);
  });
});
