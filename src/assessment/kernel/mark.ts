import type { Reason } from '../result/reason.ts';

/** A mark on the ground, in whole metres from where the roll starts; or why there is none. */
export interface Mark {
  readonly id:
    | 'aiming-point'
    | 'latest-lift-off'
    | 'acceleration-check'
    | 'latest-reject-point'
    | 'latest-touchdown-point'
    | 'latest-go-around-point';
  readonly at_m: number | undefined;
  /** Of the runway, as a share. */
  readonly share: number | undefined;
  /** For the acceleration check: the speed due there. */
  readonly speed_kias?: number;
  readonly reason?: Reason;
}
