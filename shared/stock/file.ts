import type { AskedCode } from '../gdtf/index.ts';
import { checkProfile, type Emitter, idByContent, type Profile } from '../profile/index.ts';
import type { FileEntry } from './entry.ts';
import { type Figure, Figures, feedOf, fieldOf, UNREAD } from './figures.ts';
import { type OwnPanel, withOwnPanel } from './panel/index.ts';
import type { StockNames } from './profile.ts';

/** What an entry that was read from a file comes to. */
export interface FileFixture {
	readonly profile: Profile;
	/** Every figure of it, and whether file or label gave it or it was assumed. */
	readonly figures: readonly Figure[];
	/** What was read of its panel; null where nobody wrote it down. */
	readonly own: OwnPanel | null;
}

/**
 * The fixture of an entry that was read from a file: as the file has it, with its name and what its label says over it. Its id
 * changes with all that is in it, as that of one from a chart does.
 * @throws InputError as `readProfile`, where file and label do not fit each other
 */
export function fileFixture(
	entry: FileEntry,
	{ unnamed, ownPanel }: Pick<StockNames, 'unnamed' | 'ownPanel'>,
): FileFixture {
	const figures = new Figures();
	const { profile: read, asked } = entry;
	const isAsked = (code: AskedCode): boolean => asked.some((each) => each.code === code);
	/** What the label says, or else the file, which may say nothing either. */
	const figureOf = (code: 'watts' | 'lumens' | 'beam', label: number | null, found: number): number => {
		const value = label ?? found;
		const is = label === null && isAsked(code) ? 'assumed' : 'given';
		if (code === 'beam') figures.note(code, is, { degrees: round(value) });
		else if (code === 'watts') figures.note(code, is, { watts: round(value) });
		else figures.note(code, is, { lumens: round(value) });
		return value;
	};
	const { idleWatts } = read.power;
	const watts = figureOf('watts', entry.watts, sumOf(read.emitters, 'watts') + idleWatts);
	const lumens = figureOf('lumens', entry.lumens, sumOf(read.emitters, 'lumens'));
	const beam = figureOf('beam', entry.beam, read.optics.beam);
	const field = entry.beam === null ? read.optics.field : fieldOf(beam);
	figures.note('field', entry.beam !== null || isAsked('field') ? 'assumed' : 'given', { degrees: round(field) });
	figures.note('colours', isAsked('emitter-colour') || isAsked('emitters') ? 'assumed' : 'given', {
		emitters: read.emitters.map(({ name }) => name.toLowerCase()),
	});
	const lit = entry.watts === null ? read.emitters : scaled(read.emitters, 'watts', Math.max(1, watts - idleWatts));
	const made: Profile = {
		...read,
		name: entry.name.trim() === '' ? unnamed : entry.name.trim(),
		shape: entry.shape,
		emitters: entry.lumens === null ? lit : scaled(lit, 'lumens', lumens),
		optics: { beam, field },
		power: powerOf(entry, figures, isAsked('power-link')),
	};
	for (const code of ['defaults', 'follows', 'remote'] as const) figures.note(code, 'assumed', {});
	figures.note('unit-loads', 'assumed', { unitLoads: read.unitLoads });
	const { profile, own } = withOwnPanel(made, entry.panel, ownPanel, figures);
	checkProfile(profile);
	return { profile: { ...profile, id: idByContent(entry.id, 'own', profile) }, figures: figures.all, own };
}

function powerOf(entry: FileEntry, figures: Figures, isLinkAsked: boolean): Profile['power'] {
	const { idleWatts, link } = entry.profile.power;
	const feed = feedOf(entry);
	figures.note('feed', entry.feed !== null || entry.wattHours !== null ? 'given' : 'assumed', { feed });
	figures.note('idle', 'assumed', { watts: idleWatts });
	if (feed === 'battery') {
		const wattHours = figures.given('watt-hours', entry.wattHours, UNREAD.wattHours, (each) => ({ wattHours: each }));
		figures.note('charger', 'assumed', { watts: UNREAD.chargeWatts });
		return { battery: { wattHours, chargeWatts: UNREAD.chargeWatts }, link: false, idleWatts };
	}
	const has = entry.link ?? link;
	figures.note('link', entry.link === null && isLinkAsked ? 'assumed' : 'given', { has });
	return { battery: null, link: has, idleWatts };
}

const sumOf = (emitters: readonly Emitter[], of: 'watts' | 'lumens'): number =>
	emitters.reduce((sum, emitter) => sum + emitter[of], 0);

/** Emitters that come to a sum, each with the share it had. */
function scaled(emitters: readonly Emitter[], of: 'watts' | 'lumens', sum: number): Emitter[] {
	const before = sumOf(emitters, of);
	return emitters.map((emitter) => ({
		...emitter,
		[of]: before > 0 ? (emitter[of] / before) * sum : sum / emitters.length,
	}));
}

const round = (amount: number): number => Math.round(amount * 10) / 10;
