import type { DomainError } from '../units/index.ts';
import type { Fault } from './fault.ts';

/** What a formula refuses, as a fault: the parameter is its path, so that the words do not name it a second time. */
export function faultOfRefusal({ detail, message }: DomainError): Fault {
  return { path: detail.parameter, message: message.slice(detail.parameter.length + 2) };
}
