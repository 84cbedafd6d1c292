import type { Access } from './access.ts';
import type { SourceId } from './bibliography.ts';

/** One statement of one source: which document, where in it, and how it is known to us. */
export interface Citation {
  readonly source: SourceId;
  readonly locator: string;
  readonly access: Access;
}
