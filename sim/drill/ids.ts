/** Every kind of drill, permanent: saved progress and links are keyed by them. Never reused, never renamed. */
export const DRILL_IDS = Object.freeze([
	'address-keys',
	'address-dip',
	'held-colour',
	'loss-setting',
	'mains-row',
	'mode-address',
	'dip-colour',
	'programme-speed',
	'locked-address',
	'cable-missing',
	'past-512',
	'desk-percent',
	'sensors-audience',
	'row-as-one',
	'row-back-to-back',
	'desk-band',
	'strobe-left-on',
	'remote-three',
	'leader-three',
	'followers-mode',
	'defaults',
	'line-longer',
	'two-universes',
	'leader-left-on',
] as const);

export type DrillKind = (typeof DRILL_IDS)[number];
