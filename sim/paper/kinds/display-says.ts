import { type Ground, KIND_TOPICS, type Kind, LEVELS } from '../../../shared/paper/index.ts';
import type { Profile } from '../../../shared/profile/index.ts';
import { askKeys, isKeyed } from '../panel.ts';
import { askSwitches, hasFields } from '../switches.ts';

/**
 * What does the display say? Easy: a few steps along a menu; middle: into a menu, or a value stepped on; hard: all the way to a
 * value that is being set. Of a fixture with switches: which are up, for one, two or all of what its fields say. Read off the rig
 * after the same presses, or with the same switches.
 */
export const displaySays: Kind = {
	id: 'display-says',
	topic: KIND_TOPICS['display-says'],
	forms: ['one'],
	levels: LEVELS,
	fits: (ground) => panels(ground).length > 0,
	make(ground, chance, level) {
		const profile = chance.pick(panels(ground));
		return profile.panel.kind === 'dip'
			? askSwitches(profile, profile.panel, chance, level)
			: askKeys(profile, profile.panel, chance, level);
	},
};

const panels = ({ profiles }: Ground): Profile[] =>
	profiles.filter((profile) => isKeyed(profile) || hasFields(profile));
