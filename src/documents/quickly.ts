import type * as v from 'valibot';

/**
 * A schema that takes at once what is right by a look at it, and looks for what is wrong only where something is: for
 * quantities and lists of numbers, which are most of a document and mostly right.
 *
 * @param copied - the value as the schema would give it out, or nothing where it is not surely right.
 */
export function quickly<T>(
  schema: v.GenericSchema<unknown, T>,
  copied: (given: unknown) => T | undefined,
): v.GenericSchema<unknown, T> {
  return {
    ...schema,
    '~run': (dataset, config) => {
      const value = copied(dataset.value);
      return value === undefined ? schema['~run'](dataset, config) : { typed: true, value };
    },
  };
}
