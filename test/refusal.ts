import { DomainError, type DomainErrorDetail } from '../src/units/index.ts';

/** Why a call is refused; anything else that is thrown is a fault of the code. */
export function refusalOf(call: () => unknown): DomainErrorDetail | undefined {
  try {
    call();
  } catch (error) {
    if (error instanceof DomainError) return error.detail;
    throw error;
  }
  return undefined;
}

/** As `refusalOf`, of a call that must be refused. */
export function detailOf(call: () => unknown): DomainErrorDetail {
  const detail = refusalOf(call);
  if (detail === undefined) throw new Error('nothing was refused');
  return detail;
}
