import {
  densityAltitude,
  humidDensityAltitude,
  pressureAltitude,
  pressureAltitudeFromQfe,
  virtualTemperature,
} from '../../atmosphere/index.ts';
import type {
  Celsius,
  Elevation,
  Hectopascals,
  Knots,
  PressureAltitude,
  Ratio,
  TrueDirection,
} from '../../units/index.ts';
import {
  type ReportedWindComponents,
  type ReportedWindInputs,
  reportedWindComponents,
  windUsed,
} from '../../wind/index.ts';
import type { Conditions } from '../request/conditions.ts';
import type { Situation } from '../request/situation.ts';
import type { Recorder } from './step.ts';

/** The air at the aerodrome. */
export interface Air {
  readonly pressureAltitude_ft: PressureAltitude;
  /** Not worked out where nobody reads it. */
  readonly densityAltitude_ft: number | undefined;
  readonly humidDensityAltitude_ft: number | undefined;
  /** The temperature at which tables are read: the air's own, or virtual by policy. */
  readonly tableTemperature_degC: Celsius;
  readonly temperature_degC: Celsius;
  /** The density altitude at which tables are read that have such an axis: at the table temperature. */
  readonly tableDensityAltitude_ft: number | undefined;
}

/** Pressure and density altitude of the hour. */
export function airOf(r: Recorder, situation: Situation, conditions: Conditions): Air {
  const { pressure } = conditions;
  const elevation = situation.runway.aerodrome_ft as Elevation;
  const temperature = conditions.temperature_degC as Celsius;
  const altitude =
    'qnh_hPa' in pressure
      ? r.step('atmosphere.pressure-altitude', 'pressure altitude', pressureAltitude, {
          elevation,
          qnh: pressure.qnh_hPa as Hectopascals,
        })
      : r.step('atmosphere.pressure-altitude-from-qfe', 'pressure altitude', pressureAltitudeFromQfe, {
          qfe: pressure.qfe_hPa as Hectopascals,
        });
  const { dewPoint_degC } = conditions;
  const byVirtual = situation.policies.humidity === 'virtual temperature' && dewPoint_degC !== undefined;
  // It informs, unless a table runs along it: nobody waits for it where nobody reads.
  if (!r.explains && !situation.readsDensityAltitude && !byVirtual) return plainAir(altitude, temperature);
  const density = r.step('atmosphere.density-altitude', 'density altitude', densityAltitude, {
    pressureAltitude: altitude,
    temperature,
  });
  const humidAir = { pressureAltitude: altitude, temperature, dewPoint: dewPoint_degC as Celsius };
  const humid =
    dewPoint_degC === undefined
      ? undefined
      : r.step('atmosphere.humid-density-altitude', 'density altitude with humidity', humidDensityAltitude, humidAir);
  const tableTemperature = byVirtual
    ? r.step('atmosphere.virtual-temperature', 'virtual temperature', virtualTemperature, humidAir)
    : temperature;
  if (byVirtual) r.decide('virtual-temperature-used', { temperature_degC: tableTemperature });
  return {
    pressureAltitude_ft: altitude,
    densityAltitude_ft: density,
    humidDensityAltitude_ft: humid,
    tableTemperature_degC: tableTemperature,
    tableDensityAltitude_ft: byVirtual ? (humid ?? density) : density,
    temperature_degC: temperature,
  };
}

/** Air of which only pressure altitude and temperature are asked for. */
function plainAir(pressureAltitude_ft: PressureAltitude, temperature_degC: Celsius): Air {
  return {
    pressureAltitude_ft,
    densityAltitude_ft: undefined,
    humidDensityAltitude_ft: undefined,
    tableTemperature_degC: temperature_degC,
    temperature_degC,
    tableDensityAltitude_ft: undefined,
  };
}

/** The wind on this runway: the worst of the report, and the part of it that is used. */
export interface Wind {
  readonly components: ReportedWindComponents;
  /** Headwind positive, by the policy on wind; what enters gradients, marks and the tailwind criterion. */
  readonly used_kt: Knots;
  /** What enters the printed distances: the whole component where these contain the accountability already. */
  readonly inTables_kt: Knots;
  readonly worstCrosswind_kt: number;
}

/** Takes the reported wind apart and applies the wind accountability. */
export function windOf(r: Recorder, situation: Situation, conditions: Conditions): Wind {
  const { from_deg, speed_kt, gust_kt, range_deg } = conditions;
  const components = r.step('wind.reported', 'wind components', reportedWindComponents<TrueDirection>, {
    from: from_deg as TrueDirection | 'variable',
    speed: speed_kt as Knots,
    gust: gust_kt as Knots,
    range: range_deg as ReportedWindInputs<TrueDirection>['range'],
    direction: situation.runway.direction_deg as TrueDirection,
  });
  const includes = situation.table?.includes.windAccountability;
  const { headwindShare, tailwindShare } = situation.policies;
  if (includes === 'not stated') r.decide('accountability-not-stated', {});
  const used = usedOf(r, situation, components, headwindShare, tailwindShare);
  if (used < 0) r.decide('tailwind-used', { wind_kt: -used, share: tailwindShare });
  else if (used > 0) r.decide('headwind-used', { wind_kt: used, share: headwindShare });
  if (includes === true) r.decide('accountability-included', {});
  return {
    components,
    used_kt: used,
    inTables_kt: includes === true ? usedOf(r, situation, components, 1, 1) : used,
    worstCrosswind_kt: Math.max(components.crosswindFromLeft, components.crosswindFromRight),
  };
}

/** The wind used with the given shares; what is only the noise of a wind exactly abeam is none. */
function usedOf(
  r: Recorder,
  situation: Situation,
  wind: ReportedWindComponents,
  headwind: number,
  tailwind: number,
): Knots {
  const { leastHeadwind, leastHeadwindAtGust } = wind;
  const headwindShare = headwind as Ratio;
  const tailwindShare = tailwind as Ratio;
  const used = r.step('wind.used', 'wind used', windUsed, {
    leastHeadwind,
    leastHeadwindAtGust,
    headwindShare,
    tailwindShare,
  });
  return creditedHeadwind(r, situation, Math.abs(used) < 1e-9 ? (0 as Knots) : used);
}

/** No more headwind than the manual's last printed one is used, and none where the manual gives no law. */
function creditedHeadwind(r: Recorder, situation: Situation, used: Knots): Knots {
  if (used <= 0 || situation.table === undefined) return used;
  const cap_kt = situation.windLaws.greatestHeadwind_kt;
  if (used <= cap_kt) return used;
  r.decide(cap_kt === 0 ? 'no-headwind-law' : 'headwind-capped', cap_kt === 0 ? {} : { cap_kt });
  return cap_kt as Knots;
}
