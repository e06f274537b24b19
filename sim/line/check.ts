import { InputError } from '../../shared/error/index.ts';
import { splitPort } from '../../shared/sheet/index.ts';
import type { Wiring } from './types.ts';

function twice(code: string, path: string, what: string, id: string): InputError {
	return new InputError(
		code,
		path,
		`Every ${what} needs an id of its own, but "${id}" is there twice. Rename or remove one.`,
	);
}

/** Refuses wiring that cannot be: the schema of a sheet sees to shapes, this to how the parts fit. */
export function checkWiring(wiring: Wiring): void {
	const devices = new Set<string>(['desk']);
	wiring.receivers.forEach((receiver, i) => {
		if (devices.has(receiver.fixture))
			throw twice('line.device-twice', `receivers[${i}].fixture`, 'device', receiver.fixture);
		devices.add(receiver.fixture);
		if (!(receiver.unitLoads >= 0 && receiver.unitLoads < Number.POSITIVE_INFINITY)) {
			throw new InputError(
				'line.loads',
				`receivers[${i}].unitLoads`,
				`Unit loads are a number from 0 up (1 for most receivers), but ${receiver.fixture} has ${receiver.unitLoads}. Correct its profile.`,
			);
		}
	});
	wiring.boxes.forEach(({ id }, i) => {
		if (devices.has(id)) throw twice('line.device-twice', `boxes[${i}].id`, 'device', id);
		devices.add(id);
	});
	const cables = new Set<string>();
	wiring.cables.forEach((cable, i) => {
		if (cables.has(cable.id)) throw twice('line.cable-twice', `cables[${i}].id`, 'cable', cable.id);
		cables.add(cable.id);
		if (!(cable.length > 0 && cable.length < Number.POSITIVE_INFINITY)) {
			throw new InputError(
				'line.length',
				`cables[${i}].length`,
				`A cable's length is a number of metres above 0, but cable ${cable.id} has ${cable.length}. Measure it, or guess.`,
			);
		}
	});
	const sockets = new Set<string>();
	wiring.talkers.forEach((talker, i) => {
		const socket = talker.kind === 'leader' ? talker.fixture : talker.port;
		if (sockets.has(socket)) {
			throw new InputError(
				'line.talker-twice',
				`talkers[${i}]`,
				`One socket has one talker, but ${socket} is listed twice. Remove one of the two.`,
			);
		}
		sockets.add(socket);
		if (
			talker.kind === 'leader' &&
			(talker.fixture === 'desk' || !devices.has(talker.fixture) || splitPort(talker.port).device !== talker.fixture)
		) {
			throw new InputError(
				'line.leader-unknown',
				`talkers[${i}]`,
				`A leader talks at a socket of its own and is one of the receivers, but ${talker.fixture} at ${talker.port} is not. Add the fixture, or take the talker away.`,
			);
		}
	});
}
