import type { JSX } from 'preact';
import { socketWords } from '#words/bench/index.ts';
import type { Port } from '../../../shared/sheet/index.ts';
import { cableName, portText } from '../../wording/index.ts';
import { inSocket, pressSocket } from './hand.ts';
import { useBench, useSeen } from './view.ts';

/** A data socket: a press plugs in, pulls out, or takes the terminator out, by what is in it and what the hand holds. */
export function Socket({ port, label }: { port: Port; label: string }): JSX.Element {
	const bench = useBench();
	const { store, hold, tell, can } = bench;
	const [kind, cable, waits] = useSeen(({ hand }) => {
		const found = inSocket(store.rig, port);
		const id = found.kind === 'cable' ? found.cable.id : null;
		return [found.kind, id, hand?.kind === 'fresh' && hand.from === port, store.rig.sheet];
	});
	const name = portText(port, store.rig);
	const what = cable !== null ? cableName(cable) : kind === 'terminator' ? socketWords.terminator : socketWords.free;
	return (
		<button
			type="button"
			class="socket"
			disabled={!can('line')}
			data-port={port}
			data-in={waits ? 'cable' : kind}
			data-waits={waits}
			aria-label={socketWords.name(name, what)}
			onClick={() => {
				const { event, hand: then, refused } = pressSocket(store.rig, bench.hand, port, bench.next);
				if (refused) {
					store.say(socketWords.taken(name, what));
					return;
				}
				if (event && !store.send(event)) return;
				if (event?.type === 'cable.unplug') tell(socketWords.unplugged(what, name));
				if (event?.type === 'terminator.remove') tell(socketWords.terminatorOut(name));
				hold(then);
			}}
		>
			<span class="socket-label">{label}</span>
			<svg viewBox="0 0 32 32" width="32" height="32" aria-hidden="true">
				<circle class="socket-ring" cx="16" cy="16" r="14" />
				<circle class="socket-face" cx="16" cy="16" r="10.5" />
				<g class="socket-pins">
					<circle cx="11" cy="14" r="2" />
					<circle cx="21" cy="14" r="2" />
					<circle cx="16" cy="21.5" r="2" />
				</g>
				<circle class="socket-plug" cx="16" cy="16" r="8.5" />
				<path class="socket-end" d="M9 16h2.5l1.5-4 3 8 3-8 1.5 4H23" />
			</svg>
		</button>
	);
}
