/** Of what does nothing here, and may do much on the real fixture: one sentence wherever that is said. */
export const REAL_ACTS =
	'The real one acts, and may flash. Look in the manual. Try it only before doors: no data cable in it, everyone told, nobody in front of it. Then set it back.';
/** Of a panel's items among those, before it. */
export const LEFT_ALONE = 'Leave reset, firmware, calibration, fans and heat to whoever looks after the gear.';
