// Arrow columns in and out: a table of weather and a request become a table of verdicts and distances, batch by batch.

import {
  Field,
  makeData,
  RecordBatch,
  RecordBatchReader,
  Schema,
  Struct,
  Table,
  tableFromIPC,
  tableToIPC,
} from 'apache-arrow';
import { prepareTakeoffColumns } from 'groundroll/columns';
import { columnOf, dataOf, figures, verdictData, verdictType } from './arrow.mjs';
import { report, stopwatch, summed, tallied } from './report.mjs';
import { firstHours, hoursOfYear, options, partsOf, prepared, requestOf, weatherOfStations } from './scenario.mjs';

const inputs = new Schema([
  figures('wind_from', 'degTrue'),
  figures('wind_speed', 'kt'),
  figures('wind_gust', 'kt'),
  figures('temperature', 'degC'),
  figures('qnh', 'hPa'),
]);
const outputs = new Schema([
  new Field('verdict', verdictType, false),
  figures('takeoff_distance_required_m', 'm'),
  figures('takeoff_distance_margin_m', 'm'),
]);

const batchOf = (schema, children) =>
  new RecordBatch(
    schema,
    makeData({ type: new Struct(schema.fields), length: children[0].length, nullCount: 0, children }),
  );

/** What an engine calls for one batch of one partition; the take-off is prepared once for the partition. */
export function compareBatch(takeoff, batch) {
  const weather = {
    from: columnOf(batch, 'wind_from'),
    speed: columnOf(batch, 'wind_speed'),
    gust: columnOf(batch, 'wind_gust'),
    temperature: columnOf(batch, 'temperature'),
    qnh: columnOf(batch, 'qnh'),
  };
  const into = takeoff.columns({ rows: batch.numRows, criteria: ['takeoff-distance'] });
  const found = takeoff.compare({ weather, into });
  const [{ value, margin, hasFigure }] = found.criteria;
  const children = [verdictData(found.verdict), dataOf(value, hasFigure), dataOf(margin, hasFigure)];
  return { batch: batchOf(outputs, children), tally: tallied(found) };
}

/** The weather of a station as an Arrow stream in batches of a quarter of a year. */
function streamOf(weather) {
  const { length } = weather.speed.values;
  const quarters = Array.from({ length: 4 }, (_, i) => [i, i + 1].map((part) => Math.floor((part * length) / 4)));
  const batches = quarters.map(([from, to]) =>
    batchOf(
      inputs,
      [weather.from, weather.speed, weather.gust, weather.temperature, weather.qnh].map(({ values }) => {
        const part = values.slice(from, to);
        return dataOf(
          part,
          Uint8Array.from(part, (value) => (Number.isNaN(value) ? 0 : 1)),
        );
      }),
    ),
  );
  return tableToIPC(new Table(inputs, batches), 'stream');
}

const { evaluations, json } = options();
const parts = partsOf(evaluations);
const weather = weatherOfStations();
const years = weather.map(streamOf);
const given = parts.map(({ station, first, end }) =>
  end - first === hoursOfYear ? years[station] : streamOf(firstHours(weather[station], end - first)),
);

const stop = stopwatch();
let firstBytes;
const tallies = parts.map(({ runway }, i) => {
  const takeoff = prepared(prepareTakeoffColumns(requestOf(runway)));
  const done = [...RecordBatchReader.from(given[i])].map((batch) => compareBatch(takeoff, batch));
  const batches = done.map(({ batch }) => batch);
  const bytes = tableToIPC(new Table(outputs, batches), 'stream');
  firstBytes ??= bytes;
  return summed(done.map(({ tally }) => tally));
});
const times = stop();

report('through Arrow, in one thread', summed(tallies), { runways: parts.length, threads: 1, ...times }, json);
if (!json) {
  const table = tableFromIPC(firstBytes);
  const { nullCount } = table.getChild('takeoff_distance_required_m');
  console.log(`${table.numRows} rows for the first runway end, ${nullCount} without a distance; the last of them:`);
  console.log(JSON.stringify(table.get(table.numRows - 1)));
}
