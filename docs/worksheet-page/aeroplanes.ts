import corran from '../../examples/performance-data/corran-four.json' with { type: 'json' };
import linnet from '../../examples/performance-data/linnet-two.json' with { type: 'json' };
import plover from '../../examples/performance-data/plover-two.json' with { type: 'json' };
import skerry from '../../examples/performance-data/skerry-two.json' with { type: 'json' };

/** The invented aeroplanes by their word in the address. */
export const aeroplanes: Readonly<Record<string, unknown>> = {
  'corran-four': corran,
  'linnet-two': linnet,
  'plover-two': plover,
  'skerry-two': skerry,
};

interface Configuration {
  readonly id: string;
  readonly name: string;
}

/** The configurations that data have for a phase; none of data that are none. */
export function configurationsOf(data: unknown, phase: string): readonly Configuration[] {
  const { configurations } = (data ?? {}) as { configurations?: readonly (Configuration & { phase: string })[] };
  return Array.isArray(configurations) ? configurations.filter((each) => each.phase === phase) : [];
}
