import * as v from 'valibot';
import { landingRequestSchema, takeoffRequestSchema } from '../../assessment/request/request-schema.ts';
import { measureSchema } from '../../documents/index.ts';

/** What the second assessment may leave out because the first has it. */
const ofTheFirst = ['performanceData', 'mass', 'runway', 'weather', 'factorSet'] as const;

/** The schema of a request for both ends of a flight, or for in and out of one field. */
export const departureAndArrivalRequestSchema = v.strictObject({
  schema: v.literal('groundroll/departure-and-arrival-request/1'),
  sequence: v.picklist(['departure then arrival', 'arrival then departure']),
  departure: v.partial(takeoffRequestSchema, ofTheFirst),
  arrival: v.partial(landingRequestSchema, ofTheFirst),
  fuelBurnt: v.exactOptional(measureSchema(['kg', 'lb'], 0, 2000)),
  departureTemperature: v.exactOptional(measureSchema(['degC', 'degF'], -40, 50)),
});
