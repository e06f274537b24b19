import type { Condition } from './types.ts';

/** A fixture with nothing wrong in it. */
export const UNHARMED: Condition = Object.freeze({
	deadEmitters: [],
	foldBack: 1,
	covered: false,
	receiverDead: false,
	badSocket: null,
	extraLoads: 0,
	sensorDead: false,
	microphoneDead: false,
	displayDead: false,
	batteryHealth: 1,
	chargerDead: false,
});
