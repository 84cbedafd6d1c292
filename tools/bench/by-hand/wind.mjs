// The formulas of `src/wind` by hand: arguments in the order of the record's inputs, no checks, the same arithmetic.

const g_mps2 = 9.80665;
const rad = (angle_deg) => (angle_deg * Math.PI) / 180;
const deg = (angle_rad) => (angle_rad * 180) / Math.PI;
const mps = (v_kt) => (v_kt * 1852) / 3600;
const onCompass = (angle_deg) => {
  const turned = angle_deg % 360;
  return turned <= 0 ? turned + 360 : turned;
};
const clockwise = (from, to) => (to - from + 720) % 360;
const headwindOf = (from, speed_kt, direction) => speed_kt * Math.cos(rad(from - direction));
const crosswindOf = (from, speed_kt, direction) => speed_kt * Math.sin(rad(from - direction));
const intoWind_deg = (crosswind_kt, v_kt) => deg(Math.asin(crosswind_kt / v_kt));
const bankFor = (v_kt, radius_m) => deg(Math.atan(mps(v_kt) ** 2 / (g_mps2 * radius_m)));
const rateOfTurn = (v_kt, bank_deg) => deg((g_mps2 * Math.tan(rad(bank_deg))) / mps(v_kt));
const radius = (v_kt, bank_deg) => mps(v_kt) ** 2 / (g_mps2 * Math.tan(rad(bank_deg)));

const triangle = (from, speed_kt, track_deg, v_kt) => {
  const angle_rad = Math.asin(crosswindOf(from, speed_kt, track_deg) / v_kt);
  const angle_deg = deg(angle_rad);
  return {
    windCorrectionAngle: angle_deg,
    drift: 0 - angle_deg,
    heading: onCompass(track_deg + angle_deg),
    groundSpeed: v_kt * Math.cos(angle_rad) - headwindOf(from, speed_kt, track_deg),
  };
};

const turnedToTheLeft = { upwind: 0, crosswind: -90, downwind: 180, base: 90, final: 0 };

/** Distance across the runway, in radii of the turn, and the change of heading. */
const turnInWind = (v_kt, headwind_kt, crosswind_kt, circuit) => {
  const rx = -headwind_kt / v_kt;
  const ry = (circuit === 'left' ? -crosswind_kt : crosswind_kt) / v_kt;
  const change_rad = Math.PI / 2 + Math.asin(rx) + Math.asin(ry);
  return { rx, ry, change_rad, acrossInRadii: Math.sqrt(1 - ry ** 2) + rx + ry * change_rad };
};

export const algebraic = {
  'wind.used': (mean_kt, gust_kt, headwindShare, tailwindShare) =>
    mean_kt >= 0 && gust_kt >= 0
      ? headwindShare * mean_kt
      : -Math.max(tailwindShare * Math.max(0, -mean_kt), Math.max(0, -gust_kt)),
  'wind.ground-speed': (v_kt, headwind_kt) => v_kt - headwind_kt,
};

export const transcendental = {
  'wind.components': (from, speed_kt, direction) => {
    const angle_rad = rad(from - direction);
    return { headwind: speed_kt * Math.cos(angle_rad), crosswind: speed_kt * Math.sin(angle_rad) };
  },
  'wind.component-spread': (from, halfWidth, speed_kt, direction) => {
    const first = clockwise(0, from - halfWidth);
    const last = clockwise(0, from + halfWidth);
    const headwind1 = headwindOf(first, speed_kt, direction);
    const headwind2 = headwindOf(last, speed_kt, direction);
    const crosswind1 = crosswindOf(first, speed_kt, direction);
    const crosswind2 = crosswindOf(last, speed_kt, direction);
    const begin = from - halfWidth;
    const arc = 2 * halfWidth;
    return {
      leastHeadwind: clockwise(begin, direction + 180) <= arc ? 0 - speed_kt : Math.min(headwind1, headwind2),
      greatestHeadwind: clockwise(begin, direction) <= arc ? speed_kt : Math.max(headwind1, headwind2),
      leastCrosswind: clockwise(begin, direction + 270) <= arc ? 0 - speed_kt : Math.min(crosswind1, crosswind2),
      greatestCrosswind: clockwise(begin, direction + 90) <= arc ? speed_kt : Math.max(crosswind1, crosswind2),
    };
  },
  // A wind with a direction and a range; calm and variable winds need no arithmetic.
  'wind.reported': (from, speed_kt, gust_kt, range, direction) => {
    const angle_rad = rad(from - direction);
    const first_rad = rad(range.from - direction);
    const last_rad = rad(range.to - direction);
    const ahead = Math.cos(angle_rad);
    const across = Math.sin(angle_rad);
    const least = Math.min(ahead, Math.cos(first_rad), Math.cos(last_rad));
    const sine1 = Math.sin(first_rad);
    const sine2 = Math.sin(last_rad);
    const arc = clockwise(range.from, range.to);
    const isBehind = clockwise(range.from, direction + 180) <= arc;
    const isLeft = clockwise(range.from, direction + 270) <= arc;
    const isRight = clockwise(range.from, direction + 90) <= arc;
    return {
      headwind: speed_kt * ahead,
      crosswind: speed_kt * across,
      headwindAtGust: gust_kt * ahead,
      crosswindAtGust: gust_kt * across,
      leastHeadwind: isBehind ? -speed_kt : speed_kt * least,
      leastHeadwindAtGust: isBehind ? -gust_kt : gust_kt * least,
      crosswindFromLeft: isLeft ? gust_kt : gust_kt * Math.max(0, -across, -sine1, -sine2),
      crosswindFromRight: isRight ? gust_kt : gust_kt * Math.max(0, across, sine1, sine2),
    };
  },
  'wind.triangle': triangle,
  'wind.crab-angle': intoWind_deg,
  'wind.sideslip-angle': intoWind_deg,
  'wind.sideslip-bank': (crosswind_kt, v_kt, cyBeta, cl) =>
    deg(Math.asin((-cyBeta * rad(intoWind_deg(crosswind_kt, v_kt))) / cl)),
  'wind.largest-wind': (angle_deg, crosswindLimit, tailwindLimit, headwindLimit, tailwindShare, upTo) => {
    const ahead = Math.cos(rad(angle_deg));
    const across = Math.sin(rad(angle_deg));
    let limitedBy = 'none';
    let speed = upTo;
    if (across > 1e-12 && crosswindLimit / across <= speed) {
      limitedBy = 'crosswind';
      speed = crosswindLimit / across;
    }
    const behind = -tailwindShare * ahead;
    if (behind > 1e-12 && tailwindLimit / behind <= speed) {
      limitedBy = 'tailwind';
      speed = tailwindLimit / behind;
    }
    if (ahead > 1e-12 && headwindLimit / ahead <= speed) {
      limitedBy = 'headwind';
      speed = headwindLimit / ahead;
    }
    return limitedBy === 'none' ? { limitedBy } : { limitedBy, speed };
  },
  'wind.headwind-at-height': (headwind_kt, sensor_m, height_m, exponent) =>
    headwind_kt * (height_m / sensor_m) ** exponent,
  'wind.turn-radius': radius,
  'wind.rate-of-turn': rateOfTurn,
  'wind.turn-time': (v_kt, bank_deg, change_deg) => change_deg / rateOfTurn(v_kt, bank_deg),
  'wind.bank-around-point': bankFor,
  'wind.circuit-leg': (leg, circuit, direction_deg, from, speed_kt, v_kt, length_m) => {
    const turned_deg = circuit === 'left' ? turnedToTheLeft[leg] : -turnedToTheLeft[leg];
    const track = onCompass(direction_deg + turned_deg);
    const { windCorrectionAngle, drift, heading, groundSpeed } = triangle(from, speed_kt, track, v_kt);
    return { leg, track, windCorrectionAngle, drift, heading, groundSpeed, time: length_m / mps(groundSpeed) };
  },
  'wind.base-to-final-turn': (v_kt, headwind_kt, crosswind_kt, circuit, bank_deg) => {
    const { rx, ry, change_rad, acrossInRadii } = turnInWind(v_kt, headwind_kt, crosswind_kt, circuit);
    const radius_m = radius(v_kt, bank_deg);
    const headingChange = deg(change_rad);
    const lateralDistance = radius_m * acrossInRadii;
    return {
      headingChange,
      time: headingChange / rateOfTurn(v_kt, bank_deg),
      lateralDistance,
      distanceAlongRunway: radius_m * (Math.sqrt(1 - rx ** 2) + ry + rx * change_rad),
      distanceInCalm: radius_m,
      overshoot: lateralDistance - radius_m,
    };
  },
  'wind.base-to-final-bank': (v_kt, headwind_kt, crosswind_kt, circuit, start_m) =>
    bankFor(v_kt, start_m / turnInWind(v_kt, headwind_kt, crosswind_kt, circuit).acrossInRadii),
};

export const notByHand = {
  'wind.base-to-final-verdict': 'the formula of wind.base-to-final-bank and a sentence: what it costs more is words',
  'wind.runway-order': 'sorts runways and words the order: not arithmetic, but lists and sentences',
  'wind.usability-factor': 'goes through columns of observations: see its cost curve',
};
