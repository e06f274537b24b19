import { highestStart, LAST_SLOT, switchesFor, upSwitches } from '../../dmx/index.ts';
import { footprintOf, type Mode, type Profile } from '../../profile/index.ts';
import { say, severalOf } from '../draft.ts';
import { KIND_TOPICS, LEVELS, type PaperLevel } from '../ids.ts';
import { nthName } from '../places.ts';
import type { Chance, QuestionGround, QuestionKind } from '../types.ts';

/** How a fixture is set, or is meant to be. */
interface PatchedAt {
	readonly address: number;
	readonly mode: Mode;
}

/** A line of the patch sheet, and how its fixture is really set. */
interface PatchLine {
	readonly name: string;
	readonly sheet: PatchedAt;
	readonly panel: PatchedAt;
}

/** What a fixture's panel calls its modes: those of its menu, or the positions of a slide. */
function modeLabels({ panel }: Profile): ReadonlyMap<string, string> {
	if (panel.kind === 'dip') {
		const positions = panel.slides.flatMap((slide) => slide.positions);
		return new Map(positions.flatMap(({ label, sets }) => (sets.mode === undefined ? [] : [[sets.mode, label]])));
	}
	const leaves = panel.menu.flatMap((item) => (item.kind === 'menu' ? item.items : [item]));
	const choices = leaves.flatMap((item) => (item.kind === 'choice' && item.setting === 'mode' ? item.options : []));
	return new Map(choices.map(({ value, label }) => [String(value), label]));
}

/** Modes that the panel has a label of its own for, and of which a row fits. */
function modesOn(profile: Profile): Mode[] {
	const labels = modeLabels(profile);
	const all = [...labels.values()];
	return profile.modes.filter(({ id }) => {
		const label = labels.get(id);
		return label !== undefined && all.filter((each) => each === label).length === 1;
	});
}

const ROW = 6;
const rowed = (profile: Profile): Mode[] => modesOn(profile).filter((mode) => footprintOf(mode) * ROW <= LAST_SLOT / 2);
const patchable = ({ profiles }: QuestionGround): Profile[] => profiles.filter((profile) => rowed(profile).length > 0);

const COUNTS: Readonly<Record<PaperLevel, number>> = { easy: 4, middle: 5, hard: 6 };

/** An address typed wrong: one off, two digits changed about, or the next one's. Never one at which the mode does not fit. */
function wrongAddress({ address, mode }: PatchedAt, chance: Chance): number {
	const digits = String(address).padStart(3, '0');
	const swapped = Number(`${digits[0]}${digits[2]}${digits[1]}`);
	const footprint = footprintOf(mode);
	const all = [address + 1, address - 1, swapped, address + footprint, address - footprint];
	const fit = all.filter((each) => each !== address && each >= 2 && each <= Math.min(511, highestStart(footprint)));
	return chance.pick(fit);
}

/** How a fixture is set where it is not as the sheet says: its address, or from middle on its mode. */
function amiss(profile: Profile, sheet: PatchedAt, chance: Chance, level: PaperLevel): PatchedAt {
	const modes = modesOn(profile).filter(
		(mode) => mode !== sheet.mode && sheet.address <= highestStart(footprintOf(mode)),
	);
	if (level !== 'easy' && modes.length > 0 && chance.chance(0.4)) return { ...sheet, mode: chance.pick(modes) };
	return { ...sheet, address: wrongAddress(sheet, chance) };
}

/** What the panel shows for an address: three digits, or which switches are up. */
const addressShown = ({ panel }: Profile, address: number): string =>
	panel.kind === 'dip' ? upSwitches(switchesFor(address, panel.wiring)).join(' ') : String(address).padStart(3, '0');

const isSame = ({ sheet, panel }: PatchLine): boolean => sheet.address === panel.address && sheet.mode === panel.mode;

/**
 * Which fixtures are not set as the patch sheet says? Easy: four, by address; middle: five, by mode too; hard: six.
 */
export const patchAgainstPanel: QuestionKind = {
	id: 'patch-against-panel',
	topic: KIND_TOPICS['patch-against-panel'],
	forms: ['several'],
	levels: LEVELS,
	fits: (ground) => patchable(ground).length > 0,
	make(ground, chance, level) {
		const profile = chance.pick(patchable(ground));
		const mode = chance.pick(rowed(profile));
		const count = COUNTS[level];
		const first = chance.int(2, 512 - (count + 1) * footprintOf(mode));
		const wrong = new Set(
			chance.shuffle(Array.from({ length: count }, (_, i) => i)).slice(0, chance.int(1, count - 2)),
		);
		const lines = Array.from({ length: count }, (_, i): PatchLine => {
			const sheet = { address: first + i * footprintOf(mode), mode };
			const panel = wrong.has(i) ? amiss(profile, sheet, chance, level) : sheet;
			return { name: nthName(profile.name, i), sheet, panel };
		});
		const labels = modeLabels(profile);
		const isDip = profile.panel.kind === 'dip';
		const differ = lines.filter((line) => !isSame(line));
		return severalOf(
			chance,
			{
				facts: {
					fixture: profile.name,
					mode: mode.name,
					panel: profile.panel.kind,
					wiring: profile.panel.kind === 'dip' ? profile.panel.wiring : null,
					modeNames: modesOn(profile).flatMap((each) => [each.name, labels.get(each.id) ?? '']),
					patched: lines.flatMap(({ name, sheet, panel }) => [
						name,
						sheet.address,
						sheet.mode.name,
						addressShown(profile, panel.address),
						labels.get(panel.mode.id) ?? '',
						isDip ? 'switches' : 'digits',
					]),
					settings: differ.flatMap(({ name, panel }) => [name, panel.address, panel.mode.name]),
					count: differ.length,
				},
			},
			lines,
			{
				label: ({ name }) => say('name', { name }),
				isRight: (line) => !isSame(line),
				wrongs: [
					['some-missed', differ.filter(({ sheet, panel }) => sheet.address !== panel.address)],
					['some-missed', differ.filter(({ sheet, panel }) => sheet.mode !== panel.mode)],
					['other-way-about', lines.filter(isSame)],
					['one-too-many', lines],
				],
			},
		);
	},
};
