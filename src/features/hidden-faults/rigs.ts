import { InputError } from '../../../shared/error/index.ts';
import { INVENT_LEVELS } from '../../../shared/invent/index.ts';
import { footprintOf, modeOf, type Profile } from '../../../shared/profile/index.ts';
import { makeRandom, type Random } from '../../../shared/random/index.ts';
import { loadRig, QUICK_LINKS, quickSheetOf, RIG_IDS, type RigId, type RigSheet } from '../../../shared/sheet/index.ts';
import { unpackProfile } from '../profile-link/index.ts';
import { readLink } from '../rig/index.ts';
import { type DrillOf, OWN, TONIGHT, UNSEEN } from './view.ts';

/** Fixtures of a rig made for a drill: enough that some look right, and few enough to look at all. */
const FEWEST = 3;
const MOST = 5;
const LAST_SLOT = 512;

/**
 * The rig of a drill: one of the hall's, the crew's own, or one made from its seed, with the crew's own fixture or with one that nobody
 * has seen.
 * @throws InputError `hidden.rig` for a rig that is not known, and what `unpackProfile` and `readLink` throw
 */
export async function sheetFor({ rig, seed, on }: DrillOf): Promise<RigSheet> {
	if (RIG_IDS.includes(rig as RigId)) return loadRig(rig as RigId);
	if (rig === TONIGHT && on !== undefined) return (await readLink(`#rig=${on}`)).sheet;
	const random = makeRandom(seed).fork(`hidden ${rig}`);
	if (rig === OWN && on !== undefined) return madeRig(random, await unpackProfile(on));
	if (rig !== UNSEEN) throw new InputError('hidden.rig', 'rig', { trouble: 'no-such-rig', id: rig });
	const { invent } = await import('../invented/index.ts');
	for (;;) {
		const profile = invent(random.int(0, 2 ** 32 - 1), random.pick(INVENT_LEVELS));
		if (canStand(profile)) return madeRig(random, profile);
	}
}

/** Some of these fixtures, on a desk, on two outputs of it, behind a leader, or each for itself. */
function madeRig(random: Random, profile: Profile): RigSheet {
	const slots = footprintOf(modeOf(profile, profile.defaults.mode));
	if (2 * slots > LAST_SLOT) return wideRig(random, profile);
	const most = Math.max(2, Math.min(MOST, Math.floor(LAST_SLOT / slots)));
	const linked = random.pick(QUICK_LINKS);
	const count = random.int(Math.min(FEWEST, most), most);
	return { ...quickSheetOf(profile, { count, linked }), profiles: [profile] };
}

/** Of fixtures so wide that a universe holds one: each on an output of its own, or with no desk. */
function wideRig(random: Random, profile: Profile): RigSheet {
	const linked = random.pick(QUICK_LINKS.filter((each) => each !== 'desk'));
	const count = linked === 'two-universes' ? 2 : random.int(FEWEST, MOST);
	return { ...quickSheetOf(profile, { count, linked }), profiles: [profile] };
}

/** Whether switches that were never touched have the mode that the desk is patched for. */
function canStand({ panel, defaults }: Profile): boolean {
	if (panel.kind !== 'dip') return true;
	const modes = panel.slides.flatMap(({ positions }) => positions[0]?.sets.mode ?? []);
	return modes.every((mode) => mode === defaults.mode);
}
