import { footprintOf, type Mode, slotAt } from '../../shared/profile/index.ts';

/** A chart of slots as a fact: number, part (`whole`, `coarse` or `fine`), name, and so on. */
export const slotChartOf = (mode: Mode): (string | number)[] =>
	Array.from({ length: footprintOf(mode) }, (_, i) => i + 1).flatMap((n) => {
		const here = slotAt(mode, n);
		return here ? [n, here.part, here.slot.name] : [];
	});

/** The bands of every slot that has any, as a fact: the slot's name, first value, last value, name, and so on. */
export const bandChartOf = ({ slots }: Mode): (string | number)[] =>
	slots.flatMap(({ name: slot, drives }) =>
		drives.kind === 'bands' ? drives.bands.flatMap(({ from, to, name }) => [slot, from, to, name]) : [],
	);
