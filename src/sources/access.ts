/**
 * How a statement of a source is known to us. `read`: seen in the document or in a public copy of it;
 * `second-hand`: seen only as quoted by others; `recalled`: from memory; `common-practice`: taught throughout
 * the trade, no single source; `derived`: our own algebra; `policy`: our own judgement, which the user may change.
 */
export type Access = 'read' | 'second-hand' | 'recalled' | 'common-practice' | 'derived' | 'policy';
