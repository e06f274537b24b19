import { isInputError } from '../../shared/error/index.ts';
import { canSet, standingAt } from '../../shared/plan/index.ts';
import type { Profile, SettingKey, Settings, SettingValue, SomeSettings } from '../../shared/profile/index.ts';
import { makeRandom, type Random } from '../../shared/random/index.ts';
import { profileFor, type RigSheet, type SheetFixture } from '../../shared/sheet/index.ts';
import { openUnharmed } from '../rig/trusted.ts';
import { another, anyAddress, ids } from './kinds/stage.ts';
import { makeTask } from './make.ts';
import type { DrillCondition, DrillFacts, Task } from './types.ts';

/** What is asked on a rig of the crew's own, by turns of the seed: an address, two that were mixed up, a mode, and whom it listens to. Permanent. */
export const RIG_GOALS = ['address', 'swapped', 'mode', 'listen'] as const;
export type RigGoal = (typeof RIG_GOALS)[number];

/** Draws of one goal before the next is asked. */
const TRIES = 12;

/** A task on a whole rig: what is asked, and what its words need. */
export interface RigTask {
	readonly task: Task;
	readonly goal: RigGoal;
	readonly facts: DrillFacts;
}

/** One fixture of the rig, and what its panel is set to. */
interface Standing {
	readonly placed: SheetFixture;
	readonly profile: Profile;
	readonly settings: Settings;
	/** Whether the desk's patch has it so. */
	readonly isPatched: boolean;
}

/** Fixtures whose panels stand as they should not, and what the words need. */
interface Slip {
	/** By fixture id. */
	readonly wrong: ReadonlyMap<string, SomeSettings>;
	readonly facts: DrillFacts;
}

/**
 * A task on this very rig: the panels of one or two of its fixtures stand otherwise than the sheet has them, and are to be put right.
 * Goals come by turns of the seed; what these panels cannot be set to is passed over. The same sheet and seed give the same task.
 * @param sheet as it should stand; its profiles are at hand
 * @param seed a whole number from 0 to 2^53 - 1
 * @returns null where nothing can be asked on it
 */
export function rigTask(sheet: RigSheet, seed: number): RigTask | null {
	const rig = openUnharmed(sheet);
	const all = sheet.fixtures.flatMap((placed): Standing[] => {
		const settings = rig.gear.units.get(placed.id)?.state.context.settings;
		if (!settings) return [];
		const isPatched = sheet.desk?.patch.some(
			({ fixture, mode, address }) => fixture === placed.id && mode === settings.mode && address === settings.address,
		);
		return [{ placed, profile: profileFor(sheet, placed.profile), settings, isPatched: isPatched === true }];
	});
	const random = makeRandom(seed).fork('own rig');
	for (const step of RIG_GOALS.keys()) {
		const goal = RIG_GOALS[(seed + step) % RIG_GOALS.length] as RigGoal;
		for (let draw = 0; draw < TRIES; draw++) {
			const slip = SLIPS[goal](random.fork(`${goal} ${draw}`), all);
			if (!slip) break;
			const made = madeOr(sheet, all, goal, slip);
			if (made) return made;
		}
	}
	return null;
}

const SLIPS: Readonly<Record<RigGoal, (random: Random, all: readonly Standing[]) => Slip | null>> = {
	address(random, all) {
		const [one] = random.shuffle(all.filter(listens));
		if (!one) return null;
		const { placed, profile, settings } = one;
		const address = anyAddress(random, profile, settings.mode);
		return slipOf([placed, { address }], { address: settings.address, mode: settings.mode });
	},
	swapped(random, all) {
		const [one, ...rest] = random.shuffle(all.filter(listens));
		const other = rest.find(
			({ placed, settings }) =>
				placed.profile === one?.placed.profile &&
				settings.mode === one.settings.mode &&
				settings.address !== one.settings.address,
		);
		if (!one || !other) return null;
		const { wrong } = slipOf([one.placed, { address: other.settings.address }], {});
		return {
			wrong: new Map([...wrong, [other.placed.id, { address: one.settings.address }]]),
			facts: {
				fixture: one.placed.id,
				other: other.placed.id,
				address: one.settings.address,
				otherAddress: other.settings.address,
			},
		};
	},
	mode(random, all) {
		const [one] = random.shuffle(all.filter((each) => listens(each) && each.profile.modes.length > 1));
		if (!one) return null;
		const { placed, profile, settings } = one;
		const mode = another(random, ids(profile.modes), settings.mode);
		return slipOf([placed, { mode }], { mode: settings.mode, address: settings.address });
	},
	listen(random, all) {
		const [one] = random.shuffle(all.filter((each) => listens(each) || each.settings.work === 'follow'));
		if (!one) return null;
		const work = random.pick(['held', 'programme'] as const);
		return slipOf([one.placed, { work }], { follows: one.settings.work === 'follow', address: one.settings.address });
	},
};

const listens = ({ settings, isPatched }: Standing): boolean => settings.work === 'line' && isPatched;

const slipOf = ([placed, settings]: readonly [SheetFixture, SomeSettings], facts: DrillFacts): Slip => ({
	wrong: new Map([[placed.id, settings]]),
	facts: { fixture: placed.id, ...facts },
});

/** Null where a panel has no way to stand so, where it is right already, or where hands cannot put it right. */
function madeOr(sheet: RigSheet, all: readonly Standing[], goal: RigGoal, slip: Slip): RigTask | null {
	const facts = { ...slip.facts, goal };
	const asked: DrillCondition[] = [];
	const fixtures = all.map((one): SheetFixture => {
		const { placed, profile, settings } = one;
		const wrong = slip.wrong.get(placed.id);
		if (!wrong) return placed;
		const keys = Object.keys(wrong) as SettingKey[];
		if (!keys.every((key) => canSet(profile, key, wrong[key] as SettingValue))) return placed;
		// switches that say what it plays are those of its address
		const lost: SettingKey[] =
			profile.panel.kind === 'dip' ? ['work', ...(listens(one) ? ['address' as const] : [])] : [];
		for (const key of new Set([...keys, ...lost]))
			asked.push({ is: 'setting', fixture: placed.id, key, value: settings[key] });
		return { ...placed, ...standingAt(profile, { ...settings, ...wrong }) };
	});
	if (asked.length < slip.wrong.size) return null;
	try {
		const task = makeTask({ scene: 'rig', rig: { ...sheet, fixtures }, goal: asked, hands: ['panel', 'power'] });
		return { task, goal, facts };
	} catch (error) {
		if (isInputError(error) || error instanceof RangeError) return null;
		throw error;
	}
}
