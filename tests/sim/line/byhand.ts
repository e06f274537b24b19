import type { Wiring } from '../../../sim/line/index.ts';

/**
 * The same line worked out another way, for trees with one talker: by walking the only way there is, conductor by conductor,
 * and by flooding single wires. Slow, and shares nothing with `sim/line`.
 */
export interface ByHand {
	/** No frame can come in. */
	readonly stopped: boolean;
	/** Exactly one data wire comes through, by its name at the talker. */
	readonly lost: 'minus' | 'plus' | null;
	/** A terminator hangs on the wire that does not come through. */
	readonly looseTerminated: boolean;
	readonly commonOpen: boolean;
	/** Cables on the way. */
	readonly cables: readonly string[];
}

type Pin = 'common' | 'minus' | 'plus';
const crossed = (pin: Pin): Pin => (pin === 'minus' ? 'plus' : pin === 'plus' ? 'minus' : 'common');

export function byHand(wiring: Wiring, fixture: string): ByHand {
	const fixtures = new Map(wiring.receivers.map((one) => [one.fixture, one]));
	/** A fixture's sound sockets are the fixture; a bad one is a place of its own. */
	const place = (port: string) => {
		const [device = '', socket = ''] = port.split(':');
		const its = fixtures.get(device);
		return its !== undefined && its.badSocket !== socket ? device : port;
	};
	const steps = (from: string, pin: Pin) =>
		wiring.cables.flatMap((cable) => {
			if (cable.from === null || cable.to === null) return [];
			const ends = [place(cable.from), place(cable.to)] as const;
			return ([0, 1] as const).flatMap((i) => {
				if (ends[i] !== from) return [];
				const wire = i === 1 && cable.swapped ? crossed(pin) : pin;
				const whole = cable[wire] === 'sound';
				return [{ cable, to: ends[1 - i] ?? '', pin: cable.swapped ? crossed(pin) : pin, whole }];
			});
		});
	const flood = (from: string, pin: Pin) => {
		const seen = new Set([`${from} ${pin}`]);
		const left = [{ at: from, pin }];
		for (const { at, pin } of left) {
			for (const step of steps(at, pin)) {
				const key = `${step.to} ${step.pin}`;
				if (!step.whole || seen.has(key)) continue;
				seen.add(key);
				left.push({ at: step.to, pin: step.pin });
			}
		}
		return seen;
	};
	const [talker] = wiring.talkers;
	const start = talker?.kind === 'leader' ? talker.fixture : (talker?.port ?? '');
	const way = search(start, fixture);
	const sent = { minus: flood(start, 'minus'), plus: flood(start, 'plus'), common: flood(start, 'common') };
	const comes = (pin: Pin, wire: Pin) => sent[wire].has(`${fixture} ${pin}`);
	const right = { minus: comes('minus', 'minus'), plus: comes('plus', 'plus') };
	const one = right.minus !== right.plus;
	const loose = flood(fixture, right.minus ? 'plus' : 'minus');
	const earthed = (wires: Set<string>) =>
		[...wires].some((key) => {
			const at = key.split(' ')[0] ?? '';
			return at.startsWith('desk:') || fixtures.get(at)?.earthed === true;
		});
	return {
		stopped: !right.minus && !right.plus,
		lost: one ? (right.minus ? 'plus' : 'minus') : null,
		looseTerminated:
			one && wiring.terminators.some((port) => ['minus', 'plus'].some((pin) => loose.has(`${place(port)} ${pin}`))),
		commonOpen: !comes('common', 'common') && !(earthed(sent.common) && earthed(flood(fixture, 'common'))),
		cables: way,
	};

	function search(from: string, goal: string): string[] {
		const came = new Map<string, string[]>([[from, []]]);
		const left = [from];
		const device = (at: string) => at.split(':')[0] ?? '';
		const others = (at: string) => {
			const bad = fixtures.get(device(at))?.badSocket;
			return bad === undefined || bad === null ? [] : at.includes(':') ? [device(at)] : [`${at}:${bad}`];
		};
		for (const at of left) {
			const so = came.get(at) ?? [];
			for (const step of steps(at, 'common')) {
				if (came.has(step.to)) continue;
				came.set(step.to, [...so, step.cable.id]);
				left.push(step.to);
			}
			for (const next of others(at)) {
				if (came.has(next)) continue;
				came.set(next, so);
				left.push(next);
			}
		}
		return came.get(goal) ?? [];
	}
}
