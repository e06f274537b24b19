/** Every id a reason trail can hold, permanent. Words for each are in content; a test holds the two lists to each other. */
export const REASON_IDS = Object.freeze([
	'power.off',
	'power.charging',
	'power.no-mains',
	'power.hall-dark',
	'power.flat',
	'power.battery',
	'power.mains',
	'drive.line',
	'drive.follow',
	'drive.held',
	'drive.programme',
	'drive.leading',
	'drive.leading-not',
	'drive.remote-shut',
	'drive.remote-hidden',
	'drive.sensor-dead',
	'drive.remote-flat',
	'drive.remote-code',
	'source.none',
	'source.desk-off',
	'source.output-off',
	'source.leader-off',
	'source.desk',
	'source.leader',
	'source.start-code',
	'source.master',
	'line.no-cable',
	'line.cable-loose',
	'line.splitter-off',
	'line.bad-socket',
	'line.pair-open',
	'line.one-wire-open',
	'line.common-open',
	'line.swapped',
	'line.collision',
	'line.no-terminator',
	'line.too-long',
	'line.too-many-loads',
	'line.microphone-cable',
	'line.split',
	'line.ring',
	'line.extra-terminators',
	'line.receiver-dead',
	'line.common-open-yet',
	'line.microphone-cable-yet',
	'line.no-terminator-yet',
	'line.clean',
	'signal.never',
	'signal.overdue',
	'signal.holding',
	'signal.dark',
	'signal.running',
	'address.reads',
	'address.past-end',
	'address.follows',
	'address.universe-differs',
	'address.patch-differs',
	'address.mode-differs',
	'slots.intensity',
	'slots.colours',
	'slots.band',
	'slots.programme',
	'slots.held',
	'slots.dark',
	'slots.strobe',
	'slots.ignored',
	'level.nothing',
	'level.silence',
	'level.limit',
	'level.curve',
	'lamp.dead-emitter',
	'lamp.folded-back',
	'lamp.covered',
	'light.dark',
	'light.shows',
	'light.ultraviolet',
	'light.flashes',
	'light.flickers',
] as const);

export type ReasonId = (typeof REASON_IDS)[number];

/** One link of the reason trail. Words for each id are content's. */
export interface Reason {
	/** Stage, dot, what: `power.battery`, `slots.programme`. Permanent. */
	readonly id: ReasonId;
	/**
	 * Whether this link lets the light through, changes it, or stops it; or cuts off what would come by it (data, the remote, a
	 * leader's frames), while the light goes on by other means.
	 */
	readonly effect: 'passes' | 'shapes' | 'stops' | 'cuts';
	/** What the words need: ids, numbers, values. JSON only. */
	readonly facts: Readonly<Record<string, string | number | boolean | null | readonly (string | number)[]>>;
}

/** One link of a trail; its stage is the first part of its id. */
export function reason(id: ReasonId, effect: Reason['effect'], facts: Reason['facts'] = {}): Reason {
	return { id, effect, facts };
}
