// The variation: the first call at a place against the two evaluations of the model that it takes, and further dates.

import geomagnetism from 'geomagnetism';
import { magneticVariation, variationAt } from 'groundroll/magnetism';
import { interleaved, ratio, shares, spread } from './harness.mjs';

export const gates = { firstCall: { most: 1.15, of: 'two of the model’s own' }, furtherDate_ns: { most: 50 } };

const share = shares(3);
const places = Array.from({ length: 16 }, () => ({
  latitude: -80 + 160 * share(),
  longitude: -180 + 360 * share(),
  elevation: 1000 * share(),
  date: 2025 + 5 * share(),
}));
const dates = Array.from({ length: 1000 }, () => ({ date: 2025 + 5 * share() }));
const first = geomagnetism.model(new Date(Date.UTC(2025, 0, 1)));
const second = geomagnetism.model(new Date(Date.UTC(2026, 0, 1)));

const variationOf = (found) => (found.zone === 'blackout' ? found.modelledDeclination : found.variation);
const sum = (list, of) => list.reduce((total, each) => total + of(each), 0);

function points() {
  let total = 0;
  for (const { latitude, longitude, elevation } of places) {
    total += first.point([latitude, longitude, elevation / 1000]).decl;
    total += second.point([latitude, longitude, elevation / 1000]).decl;
  }
  return total;
}

/** Times the variation. */
export function measureVariation({ rounds }) {
  const at = variationAt({ latitude: 62.3, longitude: 29.5 });
  const [firstCall, prepared, model, control, further] = interleaved(
    [
      { per: places.length, run: () => sum(places, (place) => variationOf(magneticVariation(place))) },
      { per: places.length, run: () => sum(places, (place) => variationOf(variationAt(place)(place))) },
      { per: places.length, run: points },
      { per: places.length, run: points },
      { per: dates.length, run: () => sum(dates, (date) => variationOf(at(date))) },
    ],
    { rounds },
  );
  const firstCallRatio = ratio(firstCall, model);
  const furtherDate_ns = spread(further);
  return {
    gates,
    firstCall: { ns: spread(firstCall), ratio: firstCallRatio, met: firstCallRatio.median <= gates.firstCall.most },
    placeKept: { ns: spread(prepared), ratio: ratio(prepared, model) },
    model: { ns: spread(model), control: ratio(control, model) },
    furtherDate: { ns: furtherDate_ns, met: furtherDate_ns.median <= gates.furtherDate_ns.most },
  };
}
