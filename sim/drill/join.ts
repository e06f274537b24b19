import type { SheetCable } from '../../shared/sheet/index.ts';
import type { Condition } from './types.ts';

export type Join = Extract<Condition, { readonly is: 'joined' }>;

/** Whether this cable could make the join, wherever its ends are now: right kind, short enough, every wire sound. */
export function isFit(join: Join, cable: SheetCable): boolean {
	return (
		cable.kind === 'data' &&
		cable.length <= join.metres &&
		cable.common === 'sound' &&
		cable.minus === 'sound' &&
		cable.plus === 'sound' &&
		!cable.swapped
	);
}

/** Whether this cable makes the join. */
export function isSoundJoin(join: Join, cable: SheetCable): boolean {
	const { from, to } = cable;
	const across = (from === join.a && to === join.b) || (from === join.b && to === join.a);
	return across && isFit(join, cable);
}
