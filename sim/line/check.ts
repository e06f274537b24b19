import { InputError, shown } from '../../shared/error/index.ts';
import { splitPort } from '../../shared/sheet/index.ts';
import type { Wiring } from './types.ts';

function twice(code: 'line.device-twice' | 'line.cable-twice', path: string, id: string): InputError {
	return new InputError(code, path, { trouble: 'id-twice', id });
}

/** Refuses wiring that cannot be: the schema of a sheet sees to shapes, this to how the parts fit. */
export function checkWiring(wiring: Wiring): void {
	const devices = new Set<string>(['desk']);
	wiring.receivers.forEach((receiver, i) => {
		if (devices.has(receiver.fixture)) throw twice('line.device-twice', `receivers[${i}].fixture`, receiver.fixture);
		devices.add(receiver.fixture);
		if (!(receiver.unitLoads >= 0 && receiver.unitLoads < Number.POSITIVE_INFINITY)) {
			throw new InputError('line.loads', `receivers[${i}].unitLoads`, {
				expected: 'from-0',
				fixture: receiver.fixture,
				found: shown(receiver.unitLoads),
			});
		}
	});
	wiring.boxes.forEach(({ id }, i) => {
		if (devices.has(id)) throw twice('line.device-twice', `boxes[${i}].id`, id);
		devices.add(id);
	});
	const cables = new Set<string>();
	wiring.cables.forEach((cable, i) => {
		if (cables.has(cable.id)) throw twice('line.cable-twice', `cables[${i}].id`, cable.id);
		cables.add(cable.id);
		if (!(cable.length > 0 && cable.length < Number.POSITIVE_INFINITY)) {
			throw new InputError('line.length', `cables[${i}].length`, {
				expected: 'over-0',
				cable: cable.id,
				found: shown(cable.length),
			});
		}
	});
	const sockets = new Set<string>();
	wiring.talkers.forEach((talker, i) => {
		const socket = talker.kind === 'leader' ? talker.fixture : talker.port;
		if (sockets.has(socket)) {
			throw new InputError('line.talker-twice', `talkers[${i}]`, { trouble: 'source-twice', socket });
		}
		sockets.add(socket);
		if (
			talker.kind === 'leader' &&
			(talker.fixture === 'desk' || !devices.has(talker.fixture) || splitPort(talker.port).device !== talker.fixture)
		) {
			throw new InputError('line.leader-unknown', `talkers[${i}]`, {
				trouble: 'no-such-leader',
				fixture: talker.fixture,
				port: talker.port,
			});
		}
	});
}
