import type { Wire } from './parts.ts';

/** Makes wires; each has an id, from 0, by which pairs of them are told apart. */
export function wireMaker(): () => Wire {
	let made = 0;
	return () => ({ id: made++, up: null, drives: null, terminated: false, earthed: false });
}

/** The one wire that stands for all that touch this one. */
export function root(wire: Wire): Wire {
	let at = wire;
	while (at.up !== null) {
		if (at.up.up !== null) at.up = at.up.up;
		at = at.up;
	}
	return at;
}

/** Lets two wires touch. Only before any is marked: marks are not carried over. */
export function join(one: Wire, other: Wire): void {
	const a = root(one);
	const b = root(other);
	if (a !== b) b.up = a;
}
