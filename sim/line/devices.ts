import type { BoxKind, SheetBox } from '../../shared/sheet/index.ts';
import type { Box, DataSource, LineCause } from './types.ts';

/** What a kind of box is to the line. Which of its sockets sends on what comes in at which, its ports say (`shared/sheet`). */
interface LineKind {
	/** Whether it sends on only while it has power. */
	readonly needsPower: boolean;
	/** Across the pair of each socket where frames come in: unit loads (EIA-485), and terminators built in. */
	readonly input: { readonly loads: number; readonly terminators: number };
	/** Whether its commons find earth through mains. */
	readonly earthed: boolean;
	/** Why nothing leaves it while it has no power. The id is permanent: a reason trail holds it. */
	off(device: string): LineCause;
}

/** Every kind of box. */
export const LINE_KINDS: Readonly<Record<BoxKind, LineKind>> = Object.freeze({
	splitter: {
		needsPower: true,
		// one load, and a terminator since the line has no way on from there: common practice, no source
		input: { loads: 1, terminators: 1 },
		earthed: true,
		off: (splitter) => ({ cause: 'splitter-off', splitter }),
	},
});

/** A box of a sheet as the line sees it. @param isFed whether there is power at its plug */
export function lineBox({ kind, id, on, ports, dead }: SheetBox, isFed: boolean): Box {
	const { needsPower, input, earthed, off } = LINE_KINDS[kind];
	return {
		id,
		on: !needsPower || (on && isFed),
		earthed,
		off: off(id),
		inputs: ports
			.filter(({ direction }) => direction === 'in')
			.map(({ socket }) => ({ port: `${id}:${socket}`, ...input })),
		outputs: ports.flatMap(({ socket, passes }) =>
			passes?.by === 'power' && !dead?.includes(socket)
				? [{ port: `${id}:${socket}`, from: `${id}:${passes.from}` }]
				: [],
		),
	};
}

/** A desk output that sends. */
export const deskSource = ({ id, universe }: { readonly id: string; readonly universe: number }): DataSource => ({
	kind: 'desk',
	port: `desk:${id}`,
	output: id,
	universe,
});

/** A fixture that sends its own light: out of its `out`, and so both ways, since its sockets are one. */
export const leaderSource = (fixture: string): DataSource => ({ kind: 'leader', port: `${fixture}:out`, fixture });
